#pragma once

#include "report/document.h"
#include "report/json_plan.h"
#include "report/series_read.h"

#include <string>

namespace oddglass::report {

/// The report of a series, for everybody: what was settled, the one comparison it was begun for, every question over time with its figure, each sitting with what went
/// otherwise, the drinks and what is left of them, what cannot be known. No person stands in it, so there is no part for the maker.
Document seriesDocument(const words::Voice& voice, const SeriesReport& read);

/// The same as JSON: the numbers at full precision with the sentences beside them. Keys are lower case with underscores and only ever added to.
std::string seriesJson(const words::Voice& voice, const SeriesReport& read);

/// The findings alone, with "why" beside a null.
Json overTimeJson(const Series& series, const insight::OverTime& over);

/// What was seen or smelled in the batch's bottles.
Json seenJson(const Series& series, const std::vector<Note>& notes);

}  // namespace oddglass::report
