#pragma once

#include "planning/amounts.h"
#include "planning/outlook.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// What this panel would find, as the one sentence of the page: "Six people once round would miss what half can taste about two times in three."
std::string outlookHeadline(const Voice& voice, const planning::Outlook& outlook, Sought sought);

/// What it would find and miss, one sentence for each size of difference, then alike where a limit is set.
std::vector<std::string> outlookLines(const Voice& voice, const planning::Outlook& outlook, Sought sought);

/// How the chances were worked out: people, not cups, are the unit; how much people are taken to differ.
std::string outlookMethod(const Voice& voice, const planning::Outlook& outlook, int gammaPm);

/// Said before anything is poured when a plan is small.
std::string tooSmallLine(const Voice& voice, const planning::Outlook& outlook, planning::TooSmall rule);

/// One way to find more, with what it would bring.
std::string wayOutLine(const Voice& voice, const planning::WayOut& way, const planning::Outlook& now, Sought sought);

/// Who counts: "6 people taste, 1 of them made it: 5 count. One more pours."
std::string panelLine(const Voice& voice, const planning::Setup& setup, bool hasPourer);

/// What it takes, worst case over all orders: cups, evenings, waves, millilitres, bottles of each lot, minutes, grams. `lotNames` in the order of the setup.
std::vector<std::string> amountLines(const Voice& voice, const planning::Setup& setup, const planning::Amounts& amounts, const std::vector<std::string>& lotNames);

/// The words of the picture "what this panel would show".
struct OutlookBar {
  std::string label, value, readOut;
  double share = 0;   ///< 0..1
};
struct OutlookPicture {
  std::string title, nothing, always, sentence;
  std::vector<OutlookBar> bars;
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> rows;
};
OutlookPicture outlookPicture(const Voice& voice, const planning::Outlook& outlook);

/// "half can taste", "3 in 10 can taste"; alone "you can taste half the time".
std::string canTaste(const Voice& voice, Claim claim, int sharePm);

/// "if nobody can tell them apart"; alone "if you cannot tell them apart".
std::string ifNobodyTells(const Voice& voice, Claim claim);

/// What would be found, after its method: "what half can taste", "what half can pick out of three cups", "what 3 in 4 prefer".
std::string whatIsFound(const Voice& voice, const planning::Outlook& outlook, int sharePm);

}  // namespace oddglass::words
