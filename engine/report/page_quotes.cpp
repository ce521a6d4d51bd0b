#include "engine/report/page_quotes.hpp"

namespace heelrule {

std::string page_quotes(std::string_view sentence) {
  std::string quoted;
  while (!sentence.empty()) {
    const std::size_t open = sentence.find('`');
    const std::size_t close = open == std::string_view::npos ? open : sentence.find('`', open + 1);
    if (close == std::string_view::npos) {
      break;
    }
    quoted += sentence.substr(0, open);
    quoted += "‘";
    quoted += sentence.substr(open + 1, close - open - 1);
    quoted += "’";
    sentence.remove_prefix(close + 1);
  }
  return quoted.append(sentence);
}

std::vector<std::string> page_quotes(const std::vector<std::string>& sentences) {
  std::vector<std::string> quoted;
  quoted.reserve(sentences.size());
  for (const std::string& sentence : sentences) {
    quoted.push_back(page_quotes(sentence));
  }
  return quoted;
}

}  // namespace heelrule
