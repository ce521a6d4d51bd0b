// Trees that come from no file of their own.
#pragma once

#include <string>
#include <string_view>

#include "engine/reading/tree.hpp"

namespace heelrule {

/// A text, an empty list, an empty map.
Node text_node(std::string text, Span where = {});
Node list_node(Span where = {});
Node map_node(Span where = {});

/// Adds a key at the end of a map, whether or not the map has it already.
void add_entry(Node& map, std::string_view key, Node value);

/// The map below a key, made if it is not there yet.
Node& map_below(Node& map, std::string_view key, Span where = {});

}  // namespace heelrule
