// Enhancement only: every page works without this file.
(function () {
  "use strict";
  function firstFault(root) {
    return root.querySelector("[aria-invalid='true']") || root.querySelector("[data-focus]");
  }
  // A lost link must not lose what was typed: the page stays, and says that nothing was sent.
  function lost() {
    var box = document.getElementById("link-lost");
    if (box) { box.hidden = false; }
  }
  document.addEventListener("htmx:sendError", lost);
  document.addEventListener("htmx:timeout", lost);
  document.addEventListener("htmx:beforeRequest", function () {
    var box = document.getElementById("link-lost");
    if (box) { box.hidden = true; }
  });
  // After a part or a whole page was exchanged, go to the first field that was refused, else to its heading.
  document.addEventListener("htmx:afterSettle", function (event) {
    if (event.detail && event.detail.target === document.body) {
      var fault = firstFault(document);
      var place = fault || document.querySelector("h1");
      if (place) { place.focus(); }
      if (!fault) { window.scrollTo(0, 0); }
    }
  });
})();
