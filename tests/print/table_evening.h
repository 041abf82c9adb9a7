#pragma once

#include "domain/flight_form.h"
#include "print/read_back.h"
#include "sheet_evening.h"
#include "tasting/paper.h"

namespace oddglass::testing {

/// The sealed evening of tests/evening.h with a guest title of the test's own.
struct PaperEvening : SheetEvening {
  explicit PaperEvening(int rounds = 2, int spares = 1, int friendCount = 3, Method method = Method::triangle, const std::string& guestTitle = "An evening with cups")
      : SheetEvening(rounds, spares, friendCount) {
    Draft draft = session::draft(*store, session);
    draft.guestTitle = guestTitle;
    if (method == Method::sheet) {
      draft = asSheet({asked(ItemKind::check, "toffee"), asked(ItemKind::check, "butter"), asked(ItemKind::line, "sweet"), asked(ItemKind::magnitude, "bitter"), asked(ItemKind::justRight, "body", Part::main, false),
                       asked(ItemKind::line, "haze", Part::look), asked(ItemKind::line, "cracker", Part::late), asked(ItemKind::worst), asked(ItemKind::changeOne), asked(ItemKind::behaviour), asked(ItemKind::liking),
                       asked(ItemKind::rank, "", Part::last), asked(ItemKind::split, "", Part::last), asked(ItemKind::words, "", Part::last, false)}, true);
      draft.guestTitle = guestTitle;
    } else {
      draft.method = method;
      draft.question = answers(method, Question::differ) && !namesAThing(method) ? Question::differ : method == Method::preference ? Question::prefer : Question::more;
      if (namesAThing(method)) draft.attribute = "bitter", draft.expected = Slot{1};
      if (method == Method::aNotA) draft.marked = Slot{1};
    }
    draft.methodChosen = true;
    session::saveDraft(*store, clock, draft);
    seal();
  }
  tasting::TablePaper paper() { return tasting::tablePaper(*store, session); }
};

}  // namespace oddglass::testing
