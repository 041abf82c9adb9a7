#pragma once

#include "cli/desk.h"

namespace oddglass::cli {

/// Each adds its commands to the program.
void describeCount(CLI::App& app, Command::Work& chosen);
void describePower(CLI::App& app, Command::Work& chosen);
void describeLink(CLI::App& app, Command::Work& chosen);
void describePositions(CLI::App& app, Command::Work& chosen);
void describeCritical(CLI::App& app, Command::Work& chosen);
void describeMultiple(CLI::App& app, Command::Work& chosen);
void describeProportion(CLI::App& app, Command::Work& chosen);
void describeSignal(CLI::App& app, Command::Work& chosen);
void describeSequential(CLI::App& app, Command::Work& chosen);
void describeDesign(CLI::App& app, Command::Work& chosen);
void describeDrinks(CLI::App& app, Command::Work& chosen);
void describeTooEarly(CLI::App& app, Command::Work& chosen);
void describeShelf(CLI::App& app, Command::Work& chosen);
void describeWords(CLI::App& app, Command::Work& chosen);
void describePlan(CLI::App& app, Command::Work& chosen);
void describeSeal(CLI::App& app, Command::Work& chosen);
void describeTable(CLI::App& app, Command::Work& chosen);
void describeReadingOff(CLI::App& app, Command::Work& chosen);
void describeEnding(CLI::App& app, Command::Work& chosen);
void describeLooking(CLI::App& app, Command::Work& chosen);
void describeReport(CLI::App& app, Command::Work& chosen);
void describePaper(CLI::App& app, Command::Work& chosen);
void describeKeeping(CLI::App& app, Command::Work& chosen);
void describePanel(CLI::App& app, Command::Work& chosen);
void describeLean(CLI::App& app, Command::Work& chosen);
void describeExpect(CLI::App& app, Command::Work& chosen);
void describeRoom(CLI::App& app, Command::Work& chosen);
void describeNoticing(CLI::App& app, Command::Work& chosen);
void describeCard(CLI::App& app, Command::Work& chosen);
void describeOpen(CLI::App& app, Command::Work& chosen);
void describeAlike(CLI::App& app, Command::Work& chosen);
void describeOrder(CLI::App& app, Command::Work& chosen);
void describeTrend(CLI::App& app, Command::Work& chosen);
void describeAges(CLI::App& app, Command::Work& chosen);
void describeOverTime(CLI::App& app, Command::Work& chosen);
void describeSideBySide(CLI::App& app, Command::Work& chosen);
void describeReferences(CLI::App& app, Command::Work& chosen);
void describeScores(CLI::App& app, Command::Work& chosen);
void describeProfile(CLI::App& app, Command::Work& chosen);
void describeRatings(CLI::App& app, Command::Work& chosen);
void describeRanks(CLI::App& app, Command::Work& chosen);
void describeChoices(CLI::App& app, Command::Work& chosen);
void describeChecks(CLI::App& app, Command::Work& chosen);
void describeRight(CLI::App& app, Command::Work& chosen);

}  // namespace oddglass::cli
