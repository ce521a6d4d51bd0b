// A record that somebody opens on a page.
#pragma once

#include <string>
#include <string_view>

#include "engine/model/rule_set.hpp"

namespace heelrule {

/// What a page puts into its fields, as one line of JSON:
///
///     {"inspection":{"client":"C-014",…},
///      "answers":[{"name":"foot_length","side":"right","texts":["246","247 mm"],"fibres":[],
///                  "not_seen":false,"reason":"","note":"","confirmed":false,"doubt":""}],
///      "other":{…}}
///
/// `other` holds further keys of the record, to be kept. Where the text is no record of these
/// rules:
/// `{"errors":[{"line":3,"column":14,"message":…,"hint":…}]}`, as the command reports it.
std::string opened_json(std::string_view text, const RuleSet& rules);

}  // namespace heelrule
