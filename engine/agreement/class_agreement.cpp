#include "engine/agreement/class_agreement.hpp"

#include <utility>

namespace heelrule {

ClassAgreement class_agreement(const Program& program, const ClassTable& table) {
  const std::size_t observers = table.observers().size();
  ClassAgreement result;
  for (TopicRatings& rated : topic_ratings(program, table)) {
    result.topics.push_back(topic_agreement(std::move(rated), observers));
  }
  result.apart = who_stands_apart(program, result.topics, observers);
  result.confusing = confusing_topics(program, result.topics, observers);
  result.split = split_shoes(program, result.topics);
  return result;
}

}  // namespace heelrule
