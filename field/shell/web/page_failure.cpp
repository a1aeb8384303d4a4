#include "field/shell/web/page_failure.h"
#include "engine/words/result.h"

namespace hemline {

Problem problem_of(NotKept why) {
    switch (why) {
        case NotKept::full:
            return {
                say("This browser has no room left for Hemline."),
                say("Back up to a file now. Then make room on this tablet, and keep it again.")};
        case NotKept::lost:
            return {say("The browser lost the place where it keeps what is saved."),
                    say("Back up to a file now. Then load the page again, and keep it again.")};
        case NotKept::elsewhere:
            return {say("Another page wrote on this job meanwhile."),
                    say("Back up to a file now. Then close the other page, load this one again, "
                        "and keep it again.")};
        case NotKept::nothing:
        case NotKept::refused:
            break;
    }
    return {say("This browser refused to keep it."),
            say("Back up to a file now. Then allow this page to store data, and keep it again.")};
}

}  // namespace hemline
