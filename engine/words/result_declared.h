// Declares Problem and Result for headers that only name them; who makes or opens one includes
// result.h.
#pragma once

namespace hemline {

struct Problem;

template <class T>
class Result;

}  // namespace hemline
