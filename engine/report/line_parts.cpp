#include "engine/report/line_parts.hpp"

#include "engine/report/account.hpp"
#include "engine/report/json_parts.hpp"
#include "engine/report/json_writer.hpp"

namespace heelrule {

LineParts::LineParts(const Program& program, std::span<const std::string> languages)
    : program_(program), languages_(languages), answers_(program.rules.safety.size()) {
  JsonWriter json(JsonWriter::Layout::compact);
  json.begin_object();
  write_format(json, program, program.rules.title.in(languages));
  opening_ = PaddedText(json.take() + R"(,"inspection":{)");
}

void LineParts::who_and_when(const Inspection& inspection, GrowingText& line) {
  line.put(R"("date":)");
  line.put_json(inspection.date);
  line.put(R"(,"observer":)");
  line.put_json(inspection.observer);
  line.put(R"(,"client":)");
  line.put_json(inspection.client);
  line.put(R"(,"shoe":)");
  line.put_json(inspection.shoe_label);
  line.put(R"(,"marked":)");
  line.put_json(inspection.shoe_marked);
}

void LineParts::safety(const Inspection& inspection, const Verdict& verdict, Detail detail,
                       GrowingText& line) {
  std::string_view comma;
  for (std::size_t i = 0; i < verdict.safety.size(); ++i) {
    if (detail == Detail::full || verdict.safety[i].yes) {
      line.put(comma);
      comma = ",";
      line.put(answer(inspection, verdict, i));
    }
  }
}

std::string_view LineParts::answer(const Inspection& inspection, const Verdict& verdict,
                                   std::size_t which) {
  const SafetyAnswer& answer = verdict.safety[which];
  const auto make = [&] {
    const Account words = brief_account(program_, inspection, verdict, languages_);
    JsonWriter json(JsonWriter::Layout::compact);
    write_safety(json, program_, words.safety[which], answer);
    return json.take();
  };
  const bool words_beside = !inspection.observations.empty() &&
                            inspection.observations.front().trait < program_.rules.safety.size();
  if (words_beside) {
    return answer_with_words_ = make();
  }
  double of = answer.yes ? 2 : answer.asked ? 1 : 0;
  for (const Side side : answer.sides) {
    of = of * 4 + static_cast<double>(side);
  }
  return answers_[which].get(of, make).text();
}

void LineParts::expect(const Score& score) const {
  numerals_.expect(score.points().value_or(0));
  numerals_.expect(score.lowest_points());
  numerals_.expect(score.highest_points());
}

void LineParts::points(const Score& score, GrowingText& line) {
  const auto points = score.points();
  line.put(R"({"points":)");
  if (points) {
    number(*points, line);
  } else {
    line.put("null");
  }
  line.put(R"(,"lowest":)");
  number(score.lowest_points(), line);
  line.put(R"(,"highest":)");
  number(score.highest_points(), line);
}

}  // namespace heelrule
