#include "engine/doubt/better_grades.hpp"

#include <algorithm>

#include "engine/doubt/next_choice.hpp"
#include "engine/doubt/trial.hpp"
#include "engine/quantity/settle.hpp"

namespace heelrule {
namespace {

// Indices in `RuleSet::changes`, in order.
using Changes = std::vector<std::size_t>;

Changes changes_that_apply(const Program& program, const Inspection& inspection) {
  Block block(program);
  fill_rows(program, inspection, block);
  evaluate(program, block);
  Changes found;
  for (std::size_t i = 0; i < program.rules.changes.size(); ++i) {
    const Register applies = program.change_applies[i];
    if (applies == no_register || block.column(applies)[0] == 1) {
      found.push_back(i);
    }
  }
  return found;
}

class Search {
 public:
  Search(const Program& program, const Inspection& inspection, std::size_t grade)
      : program_(program),
        trial_(program, inspection),
        usable_(changes_that_apply(program, inspection)) {
    for (std::size_t better = 0; better < grade; ++better) {
      found_.push_back({better, std::nullopt});
    }
  }

  std::vector<BetterGrade> run() {
    for (std::size_t size = 1; size <= usable_.size() && !is_done(); ++size) {
      try_sets_of(size);
    }
    return std::move(found_);
  }

 private:
  // What reaches the best grade is a way to all others too.
  bool is_done() const { return found_.empty() || found_.front().changes; }

  void take(const Changes& changes, std::size_t reached) {
    for (std::size_t grade = reached; grade < found_.size(); ++grade) {
      if (!found_[grade].changes) {
        found_[grade].changes = changes;
      }
    }
  }

  void try_sets_of(std::size_t size) {
    const auto seen = [&](const Changes& changes, std::optional<std::size_t> grade) {
      if (grade) {
        take(changes, *grade);
      }
      return is_done();
    };
    std::vector<std::size_t> chosen = first_choice(size);
    do {
      Changes changes;
      for (const std::size_t i : chosen) {
        changes.push_back(usable_[i]);
      }
      const auto change = [&](const auto& put) { apply(changes, put); };
      if (go_together(changes) && trial_.add(changes, change, seen)) {
        return;
      }
    } while (next_choice(chosen, usable_.size()));
    trial_.run(seen);
  }

  bool go_together(const Changes& changes) const {
    std::vector<std::size_t> moved;
    for (const std::size_t change : changes) {
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
  void apply(const Changes& changes, const Put& put) const {
    for (const std::size_t change : changes) {
      for (const MovedTrait& moved : program_.rules.changes[change].moves) {
        for (const Register value : program_.traits[moved.trait].values) {
          if (value != no_register) {
            put(value, moved.adds ? settled(trial_.recorded(value) + moved.amount) : moved.amount);
          }
        }
      }
    }
  }

  const Program& program_;
  Trial<Changes> trial_;
  Changes usable_;
  std::vector<BetterGrade> found_;
};

}  // namespace

std::vector<BetterGrade> better_grades(const Program& program, const Inspection& inspection,
                                       std::size_t grade) {
  return Search(program, inspection, grade).run();
}

}  // namespace heelrule
