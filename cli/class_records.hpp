// The records of a class, from files and folders.
#pragma once

#include <string>
#include <vector>

#include "cli/exit_status.hpp"
#include "engine/agreement/class_record.hpp"

namespace heelrule {

/// What was collected; `status` is not `done` where a fault was found, which has been printed.
struct ClassRecords {
  std::vector<ClassRecord> records;
  std::size_t left_out = 0;  ///< single records with a fault
  bool is_whole = true;      ///< no file or folder, with who knows how many records, was lost
  ExitStatus status = ExitStatus::done;
};

/// Reads records: YAML and JSON files, many in one as `.jsonl` or `.csv`, and folders of such files
/// (those in folders below are left alone). Printed, and kept out: what cannot be read, a record
/// that does not say whose it is or of which shoe, and a second one of the same student and shoe.
ClassRecords class_records(const Program& program, const std::vector<std::string>& paths);

}  // namespace heelrule
