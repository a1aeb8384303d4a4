#include "field/update/news.h"

namespace hemline {

News::News(const News&) = default;
News::News(News&&) noexcept = default;
News& News::operator=(const News&) = default;
News& News::operator=(News&&) noexcept = default;
News::~News() = default;

}  // namespace hemline
