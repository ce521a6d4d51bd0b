// All records of a class, by shoe and student.
#pragma once

#include <string>
#include <vector>

#include "engine/agreement/class_record.hpp"
#include "engine/agreement/scaled_ratings.hpp"

namespace heelrule {

/// Shoes and students in alphabetical order, with gaps where a student did not see a shoe.
class ClassTable {
 public:
  /// Of two records of one student and one shoe the later counts; whoever collects them sees to it
  /// that there are none.
  explicit ClassTable(std::vector<ClassRecord> records);

  const std::vector<std::string>& observers() const { return observers_; }
  const std::vector<std::string>& shoes() const { return shoes_; }
  std::size_t record_count() const { return records_.size(); }

  /// The record, or null.
  const ClassRecord* at(std::size_t shoe, std::size_t observer) const;

 private:
  std::vector<std::string> observers_;
  std::vector<std::string> shoes_;
  std::vector<ClassRecord> records_;
  std::vector<std::size_t> cells_;  // index in records_, or their number
};

/// What students can agree on.
struct Topic {
  enum class Kind : std::uint8_t { trait, section, score, grade };

  Kind kind = Kind::trait;
  std::size_t index = 0;  ///< of the trait or section in the rule set
};

/// One thing that is rated: a shoe, or one side of it.
struct TopicSubject {
  std::size_t shoe = 0;
  Side side = Side::none;
};

/// The ratings of a topic; each side of a trait that has sides is a subject of its own. Only
/// subjects with a rating have a row.
struct TopicRatings {
  Topic topic;
  std::vector<TopicSubject> subjects;
  ScaledRatings ratings;
};

/// Every topic of which somebody recorded anything: the traits, the sections, the score, the grade.
std::vector<TopicRatings> topic_ratings(const Program& program, const ClassTable& table);

}  // namespace heelrule
