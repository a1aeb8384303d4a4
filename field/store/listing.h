// What is at a path, and in a folder: a call that fails is a Problem, never "not there" or "empty".
#pragma once

#include <filesystem>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

/// What a path leads to. other: a pipe, a device.
enum class There { nothing, file, folder, link, other };

/// Whether links are followed. Never where others may write (a crew folder) or where journals are:
/// a link may point anywhere.
enum class Links { followed, refused };

/// nothing: there is no such name, or the link points nowhere. Problem: it cannot be told.
Result<There> what_is(const std::filesystem::path& path, Links links = Links::followed);

/// The names in a folder, sorted, all of them. Problem: there is no such folder, or it could not be
/// read to the end.
Result<std::vector<std::string>> names_in(const std::filesystem::path& folder,
                                          Links links = Links::followed);

/// The files in a folder whose names have one of these endings, sorted by ending, then by name.
/// Folders are left out.
Result<std::vector<std::filesystem::path>> files_in(
    const std::filesystem::path& folder, std::initializer_list<std::string_view> endings);

/// A name for a new file or folder: `stem` + `ending`, with "-2", "-3", … if it is taken.
Result<std::filesystem::path> free_name(const std::filesystem::path& folder,
                                        const std::string& stem, const std::string& ending = "");

}  // namespace hemline
