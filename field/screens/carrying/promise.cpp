#include "field/screens/carrying/promise.h"

namespace hemline {

Text promise_words(Promised promised) {
    switch (promised) {
        case Promised::lasts:
            return {};
        case Promised::given:
            return say("This browser promised to keep what is saved here.");
        case Promised::not_asked:
            return say("This browser has not been asked yet to keep what is saved here.");
        case Promised::refused:
            break;
    }
    return say(
        "This browser refused to promise that it keeps what is saved here: it may clear it. Back "
        "up to a file every day, and add Hemline to the home screen.");
}

}  // namespace hemline
