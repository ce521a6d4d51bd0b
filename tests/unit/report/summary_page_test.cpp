#include "engine/report/summary_page.hpp"

#include <catch2/catch.hpp>

#include "tests/unit/report/graded.hpp"

namespace heelrule {
namespace {

const std::string house = R"(title: {en: House, es: Casa}
languages: [en, es]
sections: {fit: {title: {en: Fit, es: Ajuste}}}
traits: {firm: {ask: Is it firm, answer: yes or no}}
rules:
  firm: {title: {en: Firm heel, es: Talón firme}, section: fit, weight: 1, reads: firm,
    because: It holds., source: common practice, levels: {yes: 100 %, no: 0}}
grades: {good: {from: 80, means: Keep it.}, poor: {from: 0, means: Leave it.}}
)";

std::string summary(const std::vector<std::string>& languages) {
  const Graded sample =
      graded(house, "inspection: {rules: house, client: C-001}\nfound: {firm: no}\n");
  const GradedRecord record{sample.inspection, sample.verdict};
  PageWishes wishes;
  wishes.languages = languages;
  return summary_page(sample.program, {{record, "C-001.html"}}, wishes);
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

TEST_CASE("a language of a country falls back in the head of a summary as in its table") {
  const std::string text = summary({"es-MX"});
  CHECK(holds(text, "<title>Casa · 1 record</title>"));
  CHECK(holds(text, "@top-left{content:\"Casa\"}"));
  CHECK(holds(text, "<h1>Casa</h1>"));
  CHECK(holds(text, "Talón firme"));
  CHECK(holds(summary({}), "<title>House · 1 record</title>"));
}

}  // namespace
}  // namespace heelrule
