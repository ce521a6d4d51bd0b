// The lines of a journal that answer nothing: under which rules it was begun, and how it ended.
#pragma once

#include <string_view>

namespace heelrule::journal_keys {

/// No place of a record has such a key, since the part after its point is never one of these.
constexpr std::string_view kind = "journal.kind";        ///< the first line
constexpr std::string_view rules = "journal.rules";      ///< name and edition
constexpr std::string_view replace = "journal.replace";  ///< `yes`: the file may be replaced
constexpr std::string_view before = "journal.before";    ///< checksum of the record to amend
constexpr std::string_view by = "journal.by";            ///< who amends
constexpr std::string_view when = "journal.when";        ///< since when
constexpr std::string_view because = "journal.because";  ///< why
constexpr std::string_view finished = "journal.finished";

/// What stands in the first line of a journal of this version.
constexpr std::string_view this_kind = "heelrule journal 1";

}  // namespace heelrule::journal_keys
