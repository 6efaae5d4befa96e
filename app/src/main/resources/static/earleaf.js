// The day slider: asks the server for the day's part of the page and puts it in. Without script the form and its
// links do the same. SPDX-License-Identifier: Apache-2.0
"use strict";
(function () {
  var form = document.querySelector("form.days");
  if (!form) return;
  var slider = form.querySelector("input[type=range]");
  var kept = new Map();
  var withPass = !!form.querySelector("input[name=with]");
  var wanted = 0;

  function address(index) {
    return form.dataset.soil + "?index=" + index + (withPass ? "&with=true" : "");
  }

  function load(index) {
    var url = address(index);
    if (!kept.has(url)) {
      var answer = fetch(url, { credentials: "same-origin" }).then(function (r) {
        if (!r.ok) throw new Error(r.status);
        return r.text();
      });
      answer.catch(function () { kept.delete(url); });
      kept.set(url, answer);
    }
    return kept.get(url);
  }

  function show() {
    var index = Number(slider.value);
    var mine = ++wanted;
    load(index).then(function (html) {
      if (mine !== wanted) return;
      var part = new DOMParser().parseFromString(html, "text/html");
      ["soil-when", "soil-cut", "soil-facts"].forEach(function (id) {
        var focus = document.activeElement && document.activeElement.dataset.step;
        document.getElementById(id).replaceWith(part.getElementById(id));
        if (focus && id === "soil-when") {
          var again = document.querySelector("[data-step='" + focus + "']");
          if (again) again.focus();
        }
      });
      slider.setAttribute("aria-valuetext", document.getElementById("soil-day").textContent);
      [-1, 1].forEach(function (step) {
        if (index + step >= 0 && index + step <= Number(slider.max)) load(index + step);
      });
    }).catch(function () { form.submit(); });
  }

  slider.addEventListener("input", show);
  document.addEventListener("click", function (event) {
    var link = event.target.closest("[data-step], [data-with]");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    if (link.dataset.step) {
      slider.value = Number(slider.value) + Number(link.dataset.step);
    } else {
      withPass = link.dataset.with === "true";
      document.querySelectorAll("[data-with]").forEach(function (other) {
        if (other === link) other.setAttribute("aria-current", "true");
        else other.removeAttribute("aria-current");
      });
    }
    show();
  });
})();

// The steppers of a reading: the same arithmetic as the server's, without the trip.
(function () {
  var box = document.querySelector(".val input");
  if (!box) return;
  document.querySelectorAll(".val button").forEach(function (button) {
    button.addEventListener("click", function (event) {
      var from = box.value.trim() || box.dataset.from;
      var stage = /^V?(\d{1,2})$/i.exec(from);
      var by = Number(button.value);
      if (box.inputMode === "text") {
        if (!stage) return;
        box.value = "V" + Math.max(1, Math.min(24, Number(stage[1]) + by));
      } else {
        var step = Number(box.dataset.step);
        // A decimal comma alone; what could be anything else is left to the server, which asks.
        var start = /^\d+,(\d{1,2}|\d{4,})$/.test(from) ? from.replace(",", ".") : from;
        var next = Math.max(0, Number(start) + by * step);
        if (from === "" || isNaN(next)) return;
        box.value = String(Math.round(next * 100) / 100);
      }
      event.preventDefault();
    });
  });
})();

// The print button stands only where it can do something.
(function () {
  var button = document.querySelector("[data-print]");
  if (!button) return;
  button.hidden = false;
  button.addEventListener("click", function () { window.print(); });
})();
