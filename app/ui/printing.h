#pragma once
#include "domain/chance.h"
#include "domain/series.h"
#include "print/label_sheet.h"
#include "report/document.h"
#include "store/store.h"
#include "words/voice.h"

#include <filesystem>
#include <string_view>

namespace oddglass::ui {

/// What can be put on paper. The pourer's sheet and the key card are the key; nothing else but a report depends on it.
enum class Printed { labels, mats, sheets, blank, run, routine, pour, key, report, series, tags };

/// How it is wished.
struct Printing {
  Printed what = Printed::report;
  print::PaperSize size = print::PaperSize::a4;
  print::LabelSheet labels;               ///< of labels and tags
  report::For whom = report::For::room;   ///< of a report
};

/// The words of these on the command line: "labels", "mats" and so on; "A4", "letter", in any case. Problem notAChoice.
Printed printedNamed(std::string_view name, const std::string& argument);
print::PaperSize sizeNamed(std::string_view name, const std::string& argument);
/// Whether it is the key that is printed.
constexpr bool isKey(Printed what) { return what == Printed::pour || what == Printed::key; }

/// What the store must be opened for: only an opening of the key is logged, and writes.
store::Access accessFor(const Printing& wish);

/// Prints into a PDF that is there whole or not at all. The key is opened, which is logged, in one transaction with the writing: neither is there without the other, and only its owner
/// may read the file.
/// Problems of the use case behind it, of requireLabels, and of exchange::writeWhole ("out").
void printInto(store::Store& store, Clock& clock, const words::Voice& voice, const SessionId& session, const Printing& wish, const std::filesystem::path& file);

/// Prints tags for the bottles that a series sets aside, on the label sheets of `wish`. Problem unknown, and those of requireLabels.
void printTags(store::Store& store, const words::Voice& voice, const SeriesId& series, const Printing& wish, const std::filesystem::path& file);

/// Prints the report of a series. Problem unknown, and pagesClosed ("series") while its old pages are closed.
void printSeries(store::Store& store, const words::Voice& voice, const SeriesId& series, print::PaperSize size, const std::filesystem::path& file);

}  // namespace oddglass::ui
