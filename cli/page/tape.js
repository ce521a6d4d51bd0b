// The tape at the head of the page: each section a stretch of it, filled as its questions are answered.
import {counted, fill, make} from "./elements.js";

export class Tape {
  /** `element` is the list that the stretches stand in, `here` the choice of sections where the list has no room for names. */
  constructor(element, here) {
    this.element = element;
    this.here = here;
    here.addEventListener("change", () => {
      const heading = document.getElementById(here.value).querySelector("h2");
      heading.parentElement.scrollIntoView();
      heading.focus({preventScroll: true});
    });
  }

  /** Lays out the sections. Each has `id`, `title` and `size`, its number of questions. */
  lay(sections) {
    this.stretches = sections.map((section) => {
      const fillIn = make("span", {class: "fill", "aria-hidden": "true"});
      const count = make("span", {class: "count"});
      const link = make("a", {href: `#${section.id}`},
        fillIn, make("span", {class: "name"}, section.title), " ", count);
      return {...section, fillIn, count, link};
    });
    for (const one of this.stretches) {
      one.option = make("option", {value: one.id}, one.title);
    }
    fill(this.here, this.stretches.map((one) => one.option));
    fill(this.element, this.stretches.map((one) => {
      const item = make("li", {}, one.link);
      item.style.flexGrow = String(Math.max(one.size, 3));
      return item;
    }));
    this.watcher?.disconnect();
    this.watcher = new IntersectionObserver((entries) => {
      for (const entry of entries) {
        if (entry.isIntersecting) {
          this.reach(entry.target.id);
        }
      }
    }, {rootMargin: "-25% 0px -70% 0px"});
    for (const {id} of this.stretches) {
      this.watcher.observe(document.getElementById(id));
    }
    this.reach(this.stretches[0].id);
  }

  reach(id) {
    for (const one of this.stretches) {
      if (one.id === id) {
        one.link.setAttribute("aria-current", "location");
        this.here.value = id;
      } else {
        one.link.removeAttribute("aria-current");
      }
    }
  }

  /** Shows how many answers each section has: id to `[done, of, faulty]`. */
  measure(progress) {
    for (const one of this.stretches) {
      const [done, of, faulty] = progress.get(one.id);
      one.fillIn.style.width = `${100 * done / of}%`;
      one.link.classList.toggle("full", done === of);
      one.link.classList.toggle("faulty", faulty > 0);
      fill(one.count, `${done}/${of}`);
      one.link.title = `${one.title}: ${done} of ${counted(of, "answer")}`;
      fill(one.option, `${one.title}: ${done} of ${of}`);
    }
  }
}
