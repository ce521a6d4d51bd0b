#include "engine/report/school_mark.hpp"

#include <fmt/format.h>

#include "engine/source/characters.hpp"

namespace heelrule {
namespace {

constexpr std::string_view png_signature = "\x89PNG\r\n\x1A\n";
constexpr std::size_t png_head = 24;  // up to the end of width and height

std::uint32_t number_at(std::string_view bytes, std::size_t at) {
  std::uint32_t number = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    number = (number << 8U) | static_cast<unsigned char>(bytes[at + i]);
  }
  return number;
}

Problem png_problem(std::string_view bytes) {
  if (bytes.size() < png_head || bytes.substr(12, 4) != "IHDR") {
    return {"the mark is a PNG that breaks off", "save it once more"};
  }
  for (const std::size_t at : {std::size_t{16}, std::size_t{20}}) {
    const std::uint32_t pixels = number_at(bytes, at);
    if (pixels == 0 || pixels > most_mark_pixels) {
      return {fmt::format("the mark has {} pixels one way", pixels),
              fmt::format("make it from 1 to {} pixels wide and high", most_mark_pixels)};
    }
  }
  return {};
}

// Past blanks, comments and the XML declaration.
std::string_view first_element(std::string_view text) {
  while (true) {
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    text.remove_prefix(begin == std::string_view::npos ? text.size() : begin);
    const bool is_comment = text.starts_with("<!--");
    const std::string_view end = is_comment ? "-->" : "?>";
    if (!is_comment && !text.starts_with("<?")) {
      return text;
    }
    const std::size_t at = text.find(end);
    text.remove_prefix(at == std::string_view::npos ? text.size() : at + end.size());
  }
}

Problem svg_problem(std::string_view bytes) {
  if (const auto offence = first_offence(bytes)) {
    return {fmt::format("the mark holds {}", offence->what), "save it as an SVG in UTF-8"};
  }
  if (bytes.find("<!DOCTYPE") != std::string_view::npos ||
      bytes.find("<!ENTITY") != std::string_view::npos) {
    return {"the mark has a document type, which could grow without end",
            "save it as a plain SVG, without `<!DOCTYPE`"};
  }
  return {};
}

}  // namespace

std::string SchoolMark::address() const {
  return fmt::format("data:image/{};base64,{}", kind == MarkKind::png ? "png" : "svg+xml", base64);
}

Parsed<SchoolMark> school_mark(std::string_view bytes) {
  if (bytes.size() > most_mark_bytes) {
    return Problem{fmt::format("the mark is larger than {} KiB", most_mark_bytes >> 10U),
                   "make it smaller"};
  }
  const bool is_png = bytes.starts_with(png_signature);
  const std::string_view text = bytes.starts_with("\xEF\xBB\xBF") ? bytes.substr(3) : bytes;
  const std::string_view element = first_element(text);
  const bool is_svg = element.starts_with("<svg") && element.size() > 4 &&
                      std::string_view(" \t\r\n>/").find(element[4]) != std::string_view::npos;
  const bool may_become_svg = is_svg || element.starts_with("<!DOCTYPE");
  if (!is_png && !may_become_svg) {
    return Problem{"the mark is neither a PNG nor an SVG", "give a file of one of these two kinds"};
  }
  const Problem problem = is_png ? png_problem(bytes) : svg_problem(text);
  if (!problem.message.empty()) {
    return problem;
  }
  return SchoolMark{is_png ? MarkKind::png : MarkKind::svg, base64(is_png ? bytes : text)};
}

std::string base64(std::string_view bytes) {
  constexpr std::string_view digits =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string written;
  written.reserve((bytes.size() + 2) / 3 * 4);
  for (std::size_t at = 0; at < bytes.size(); at += 3) {
    const std::size_t count = bytes.size() - at < 3 ? bytes.size() - at : 3;
    std::uint32_t three = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      three = (three << 8U) | (i < count ? static_cast<unsigned char>(bytes[at + i]) : 0U);
    }
    for (std::size_t i = 0; i < 4; ++i) {
      written += i <= count ? digits[(three >> (18 - 6 * i)) & 63U] : '=';
    }
  }
  return written;
}

}  // namespace heelrule
