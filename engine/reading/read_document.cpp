#include "engine/reading/read_document.hpp"

#include "engine/reading/json_tree.hpp"
#include "engine/reading/yaml_tree.hpp"

namespace heelrule {

bool looks_like_json(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  return first != std::string_view::npos && text[first] == '{';
}

std::optional<Node> read_document(const Sources& sources, std::uint32_t source,
                                  Diagnostics& diagnostics) {
  return looks_like_json(sources.text(source)) ? read_json(sources, source, diagnostics)
                                               : read_yaml(sources, source, diagnostics);
}

}  // namespace heelrule
