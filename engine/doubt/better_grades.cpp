#include "engine/doubt/better_grades.hpp"

#include <algorithm>
#include <bit>

#include "engine/doubt/trial.hpp"
#include "engine/formula/operation.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

// A set of changes: bit k is the k-th.
using ChangeSet = std::uint32_t;

constexpr bool holds(ChangeSet set, std::size_t change) { return ((set >> change) & 1U) != 0; }

class Search {
 public:
  Search(const Program& program, const Inspection& inspection, std::size_t grade)
      : program_(program), trial_(program, inspection), wanted_(grade) {
    Block block(program);
    fill_rows(program, inspection, block);
    evaluate(program, block);
    for (std::size_t i = 0; i < program.rules.changes.size(); ++i) {
      const Register applies = program.change_applies[i];
      if (applies == no_register || block.column(applies)[0] == 1) {
        usable_ |= ChangeSet{1} << i;
      }
    }
  }

  std::vector<BetterGrade> run() {
    const std::size_t count = program_.rules.changes.size();
    for (int size = 1; size <= std::popcount(usable_) && wanted_ > 0; ++size) {
      try_sets_of(size, count);
    }
    for (std::size_t grade = wanted_; grade > 0; --grade) {
      found_.push_back({grade - 1, std::nullopt});
    }
    std::reverse(found_.begin(), found_.end());
    return std::move(found_);
  }

 private:
  // Of one size all have to be tried: a later one may reach a better grade than the first. Sets are
  // taken in the order in which a person would list them.
  void try_sets_of(int size, std::size_t count) {
    std::vector<ChangeSet> sets;
    for (ChangeSet set = 1; set < ChangeSet{1} << count; ++set) {
      if ((set & ~usable_) == 0 && std::popcount(set) == size && go_together(set)) {
        sets.push_back(set);
      }
    }
    std::stable_sort(sets.begin(), sets.end(), [](ChangeSet a, ChangeSet b) {
      // The one with the lowest bit that the other lacks comes first.
      const ChangeSet differing = a ^ b;
      return (a & (differing & (~differing + 1))) != 0;
    });
    reached_.clear();
    const auto seen = [&](ChangeSet set, std::optional<std::size_t> grade) {
      if (grade) {
        reached_.push_back({set, *grade});
      }
      return false;
    };
    for (const ChangeSet set : sets) {
      trial_.add(set, [&](const auto& put) { apply(set, put); }, seen);
    }
    trial_.run(seen);
    take_reached();
  }

  void take_reached() {
    while (wanted_ > 0) {
      const auto way = std::find_if(reached_.begin(), reached_.end(),
                                    [&](const Reached& one) { return one.grade < wanted_; });
      if (way == reached_.end()) {
        return;
      }
      --wanted_;
      found_.push_back({wanted_, listed(way->set)});
    }
  }

  static std::vector<std::size_t> listed(ChangeSet set) {
    std::vector<std::size_t> changes;
    for (std::size_t i = 0; i < most_changes; ++i) {
      if (holds(set, i)) {
        changes.push_back(i);
      }
    }
    return changes;
  }

  bool go_together(ChangeSet set) const {
    std::vector<std::size_t> moved;
    for (const std::size_t change : listed(set)) {
      for (const MovedTrait& one : program_.rules.changes[change].moves) {
        if (std::find(moved.begin(), moved.end(), one.trait) != moved.end()) {
          return false;
        }
        moved.push_back(one.trait);
      }
    }
    return true;
  }

  template <class Put>
  void apply(ChangeSet set, const Put& put) const {
    for (const std::size_t change : listed(set)) {
      for (const MovedTrait& moved : program_.rules.changes[change].moves) {
        for (const Register value : program_.traits[moved.trait].values) {
          if (value != no_register) {
            put(value, moved.adds ? settled(trial_.recorded(value) + moved.amount) : moved.amount);
          }
        }
      }
    }
  }

  struct Reached {
    ChangeSet set = 0;
    std::size_t grade = 0;
  };

  const Program& program_;
  Trial<ChangeSet> trial_;
  ChangeSet usable_ = 0;
  std::size_t wanted_;  // grades from here on are reached already
  std::vector<Reached> reached_;
  std::vector<BetterGrade> found_;
};

}  // namespace

std::vector<BetterGrade> better_grades(const Program& program, const Inspection& inspection,
                                       std::size_t grade) {
  return Search(program, inspection, grade).run();
}

}  // namespace heelrule
