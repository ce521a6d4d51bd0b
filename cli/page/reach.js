// The score on its ruler: the grades as bands, what can still come out as a stretch, the score as a notch.
import {draw} from "./elements.js";

const wide = 320;
const at = (points) => Math.round(points * wide) / 100;

/** `grades` are the best first, each with `name` and `from` in points; `score` is that of a verdict. */
export function reachRuler(grades, score, words) {
  const picture = draw("svg", {
    viewBox: `-8 0 ${wide + 16} 62`, class: "reach", role: "img", "aria-label": words,
  });
  const bands = [...grades].reverse();
  bands.forEach((grade, index) => {
    const from = at(grade.from);
    const to = at(bands[index + 1]?.from ?? 100);
    picture.append(draw("rect", {class: "band", x: from, y: 20, width: to - from, height: 22}));
    if (to - from > 26) {
      picture.append(draw("text", {x: (from + to) / 2, y: 58, "text-anchor": "middle"}, grade.name.replaceAll("_", " ")));
    }
  });
  for (let points = 0; points <= 100; points += 5) {
    picture.append(draw("path", {class: "stroke", d: `M${at(points)} 20v${points % 10 ? 4 : 7}`}));
  }
  picture.append(draw("rect", {
    class: "open", x: at(score.lowest), y: 29, width: Math.max(at(score.highest) - at(score.lowest), 1), height: 8,
  }));
  if (score.points !== null) {
    const x = at(score.points);
    picture.append(
      draw("path", {class: "notch", d: `M${x} 42V17l-5 -7h10l-5 7`}));
  }
  return picture;
}
