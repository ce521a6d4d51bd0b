#include "engine/report/fitting_json.hpp"

#include "engine/fitting/growth.hpp"
#include "engine/quantity/calendar_date.hpp"
#include "engine/report/fitting_account.hpp"
#include "engine/report/fitting_names.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/report/value_words.hpp"

namespace heelrule {
namespace {

class FittingWriter {
 public:
  FittingWriter(const Program& program, const Inspection& inspection, const Verdict& verdict,
                const Fitting& fitting, std::span<const std::string> languages)
      : program_(program),
        inspection_(inspection),
        verdict_(verdict),
        fitting_(fitting),
        sections_(fitting_account(program, inspection, verdict, fitting, languages)) {}

  std::string write() {
    json_.begin_object();
    json_.text("format", "heelrule fitting").number("version", fitting_json_version);
    json_.text("rules", program_.rules.name).text("edition", program_.rules.edition);
    json_.text("client", inspection_.client).text("observer", inspection_.observer);
    json_.text("date", inspection_.date);
    json_.truth("see_practitioner_first", verdict_.refers());
    feet();
    ask();
    socks();
    growth();
    said();
    json_.end_object();
    return json_.take() + "\n";
  }

 private:
  void length(std::string_view name, const std::optional<Measured>& measured) {
    json_.key(name);
    if (measured) {
      json_.begin_object();
      json_.number("mm", measured->value.value()).number("doubt", measured->doubt.value());
      json_.end_object();
    } else {
      json_.null();
    }
  }

  void number(std::string_view name, const std::optional<double>& value) {
    json_.key(name);
    value ? json_.number(*value) : json_.null();
  }

  void feet() {
    json_.key("feet").begin_object();
    for (const Side side : both_sides) {
      const FootMeasures& foot = fitting_.visit.foot(side);
      json_.key(in_words(side)).begin_object();
      length("standing", foot.length);
      length("seated", foot.seated_length);
      length("width", foot.width);
      length("girth", foot.girth);
      json_.end_object();
    }
    json_.text("longer", in_words(fitting_.shoe.longer));
    length("differ_by", fitting_.sides ? std::optional(fitting_.sides->by) : std::nullopt);
    json_.key("under_load").begin_array();
    for (const LoadChange& change : fitting_.changes) {
      under_load(change);
    }
    json_.end_array();
    json_.end_object();
  }

  void under_load(const LoadChange& change) {
    json_.begin_object();
    json_.text("side", in_words(change.side));
    length("length", change.length);
    length("width", change.width);
    json_.key("whole_sizes").begin_object();
    for (const SizeSystem system :
         {SizeSystem::british, SizeSystem::european, SizeSystem::mondopoint}) {
      json_.number(facts(system).mark, in_whole_sizes(change.length.value, system));
    }
    json_.end_object();
    json_.text("judged", name_of(change.lengthening));
    json_.end_object();
  }

  void ask() {
    json_.key("ask");
    if (verdict_.refers()) {
      json_.null();
      return;
    }
    const ShoeAdvice& shoe = fitting_.shoe;
    json_.begin_object();
    json_.text("sizes_of", shoe.wearer == Wearer::child ? "children" : "adults");
    json_.number("inside_least", shoe.inside_least.value());
    json_.number("inside_most", shoe.inside_most.value());
    json_.key("sizes").begin_array();
    for (const SizeToAsk& size : shoe.sizes) {
      json_.begin_object();
      json_.text("system", facts(size.system).mark);
      json_.key("size");
      size.size ? json_.text(show(*size.size)) : json_.null();
      json_.text("reason", size.size ? size.reason : size.size.problem().message);
      json_.end_object();
    }
    json_.end_array();
    length("width", shoe.width);
    json_.key("with_width");
    shoe.with_width ? json_.text(show(*shoe.with_width)) : json_.null();
    girth(shoe);
    smaller(shoe);
    json_.end_object();
  }

  void girth(const ShoeAdvice& shoe) {
    const auto code = [&](std::string_view name, const Parsed<GirthCode>& found) {
      json_.key(name);
      found ? json_.text(show(*found)) : json_.null();
    };
    json_.key("girth");
    if (!shoe.girth) {
      json_.null();
      return;
    }
    json_.begin_object();
    json_.number("mm", shoe.girth->girth.value.value());
    code("men", shoe.girth->men);
    code("women", shoe.girth->women);
    json_.end_object();
  }

  void smaller(const ShoeAdvice& shoe) {
    json_.key("smaller_foot");
    if (!shoe.smaller) {
      json_.null();
      return;
    }
    const SmallerFoot& foot = *shoe.smaller;
    json_.begin_object();
    json_.text("side", in_words(foot.side));
    length("shorter_by", foot.shorter_by);
    json_.number("least_space", foot.least_space.value());
    json_.number("most_space", foot.most_space.value());
    json_.text("remedy", name_of(foot.remedy));
    json_.end_object();
  }

  void socks() {
    const SockAdvice& sock = fitting_.sock;
    json_.key("socks").begin_object();
    json_.key("marked").begin_array();
    for (const MarkedSock& one : sock.marked) {
      marked(one);
    }
    json_.end_array();
    json_.key("choose");
    sock.choose && !verdict_.refers() ? json_.text(show(sock.marked[*sock.choose].range))
                                      : json_.null();
    json_.key("length_lost").begin_array();
    for (const SockLengthLost& lost : sock.lost) {
      json_.begin_object();
      json_.text("side", in_words(lost.side));
      length("length", lost.lost);
      json_.text("judged", name_of(lost.cramping));
      json_.end_object();
    }
    json_.end_array();
    number("agreed_moisture", sock.moisture);
    number("cotton", sock.cotton);
    json_.end_object();
  }

  void marked(const MarkedSock& sock) {
    json_.begin_object();
    json_.text("range", show(sock.range));
    number("shortest_foot", sock.feet ? std::optional(sock.feet->shortest.value()) : std::nullopt);
    number("longest_foot", sock.feet ? std::optional(sock.feet->longest.value()) : std::nullopt);
    json_.key("on").begin_array();
    for (const SockOnFoot& foot : sock.on) {
      json_.begin_object();
      json_.text("side", in_words(foot.side)).text("fit", name_of(foot.fit));
      json_.number("misses_by", foot.misses_by.value());
      json_.end_object();
    }
    json_.end_array();
    json_.end_object();
  }

  void growth() {
    json_.key("growth");
    if (!fitting_.child) {
      json_.null();
      return;
    }
    const ChildOutlook& child = *fitting_.child;
    const GrowthPace& pace = growth_stage(child.age).pace;
    json_.begin_object();
    json_.number("age", child.age);
    json_.key("mm_a_month_by_age").begin_object();
    json_.number("slow", pace.slow).number("expected", pace.expected).number("fast", pace.fast);
    json_.end_object();
    json_.key("own_mm_a_month");
    if (child.own) {
      json_.begin_object();
      json_.number("rate", child.own->a_month).number("doubt", child.own->doubt);
      json_.number("visits", static_cast<double>(child.own->visits));
      json_.number("months", child.own->months);
      json_.end_object();
    } else {
      json_.null();
    }
    json_.truth("by_own_rate", child.by_own_rate);
    json_.key("present_pair");
    child.present ? pair(*child.present) : static_cast<void>(json_.null());
    json_.key("new_pair");
    pair(child.fresh);
    day("measure_again", child.look_again);
    json_.end_object();
  }

  void pair(const PairOutlook& pair) {
    json_.begin_object();
    json_.text("side", in_words(pair.side));
    length("reserve", pair.reserve);
    day("earliest", pair.outgrown.earliest);
    day("expected", pair.outgrown.expected);
    day("latest", pair.outgrown.latest);
    json_.end_object();
  }

  void day(std::string_view name, const std::optional<int>& found) {
    json_.key(name);
    if (!found) {
      json_.null();
      return;
    }
    json_.begin_object();
    json_.number("days", *found);
    json_.key("date");
    fitting_.visit.date ? json_.text(show(days_after(*fitting_.visit.date, *found))) : json_.null();
    json_.end_object();
  }

  void said() {
    json_.key("said").begin_array();
    for (const FittingSection& section : sections_) {
      json_.begin_object();
      json_.text("title", section.title).key("lines").begin_array();
      for (const std::string& line : section.lines) {
        json_.text(line);
      }
      json_.end_array();
      json_.end_object();
    }
    json_.end_array();
  }

  const Program& program_;
  const Inspection& inspection_;
  const Verdict& verdict_;
  const Fitting& fitting_;
  std::vector<FittingSection> sections_;
  JsonWriter json_;
};

}  // namespace

std::string fitting_json(const Program& program, const Inspection& inspection,
                         const Verdict& verdict, const Fitting& fitting,
                         std::span<const std::string> languages) {
  return FittingWriter(program, inspection, verdict, fitting, languages).write();
}

}  // namespace heelrule
