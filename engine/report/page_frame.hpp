// What all our pages have in common: the head, the style, and what stands at the edge of paper.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/report/school_mark.hpp"

namespace heelrule {

/// A script of ours, as a module, and the base64 of its SHA-256, by which the page's policy knows
/// it (Content Security Policy Level 3, 2.3.1). It may start WebAssembly, and still load nothing.
struct PageScript {
  std::string text;
  std::string digest;
};

/// The parts of a page. Markup comes from templates and pictures of ours; the rest is words, and is
/// escaped here.
struct PageFrame {
  std::string title;          ///< words: of the document, as a browser shows it
  std::string running_left;   ///< words at the head of each sheet: `C-014`
  std::string running_right;  ///< `2026-10-03`
  std::string kind;           ///< a word of ours, for the style: `client`
  std::string head;           ///< markup: the title and whom the page is about
  std::string first;          ///< markup before the body: what a practitioner must see first
  std::string body;           ///< markup
  std::string last;           ///< markup after all else: the cautions
  std::string style;          ///< CSS of the school, which keeps to its place (see `scoped`)
  std::optional<SchoolMark> mark;
  std::string own_style;             ///< CSS of ours for this page alone
  std::optional<PageScript> script;  ///< of a page that does something
};

/// The whole HTML document. It holds no script but `script`, asks for nothing from anywhere
/// (content security policy: nothing but its own style and the pictures inside it), and prints on
/// A4 and Letter with running heads and page numbers.
std::string framed_page(const PageFrame& frame);

}  // namespace heelrule
