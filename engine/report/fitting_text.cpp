#include "engine/report/fitting_text.hpp"

#include <fmt/format.h>

#include "engine/report/fitting_account.hpp"
#include "engine/report/text_page.hpp"

namespace heelrule {
namespace {

// Who and when, as far as that is known.
std::string head(const Inspection& inspection) {
  std::string words;
  const auto add = [&](std::string_view label, std::string_view part) {
    if (!part.empty()) {
      words += fmt::format("{}{}{}", words.empty() ? "" : " · ", label, part);
    }
  };
  add("client ", inspection.client);
  add("seen by ", inspection.observer);
  add("on ", inspection.date);
  return words;
}

}  // namespace

std::string fitting_text(const Program& program, const Inspection& inspection,
                         const Verdict& verdict, const Fitting& fitting, const TextStyle& style) {
  TextPage page(style.colour);
  page.title("Feet to sizes");
  page.line(head(inspection));
  page.line(fmt::format("rules {}{}{}", program.rules.name,
                        program.rules.edition.empty() ? "" : " · edition ", program.rules.edition));
  for (const FittingSection& section :
       fitting_account(program, inspection, verdict, fitting, style.languages)) {
    page.heading(section.title, section.urgent ? TextPage::Tone::urgent : TextPage::Tone::usual);
    for (const std::string& line : section.lines) {
      page.item(line);
    }
    page.table(section.table);
  }
  return page.take();
}

}  // namespace heelrule
