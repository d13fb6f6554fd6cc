#pragma once

namespace app {

// One command each: its options, and what it does, which lands in `run` when the command is the one asked
// for.

void addCreate(CommandLine& line);
void addStarters(CommandLine& line);
void addImport(CommandLine& line);
void addExport(CommandLine& line);
void addRead(CommandLine& line);
void addCheck(CommandLine& line);
void addBoats(CommandLine& line);
void addMissing(CommandLine& line);
void addDue(CommandLine& line);
void addList(CommandLine& line);
void addCheckList(CommandLine& line);
void addTags(CommandLine& line);
void addScene(CommandLine& line);
void addLog(CommandLine& line);
void addLogAdd(CommandLine& line);
void addLogClose(CommandLine& line);
void addHistory(CommandLine& line);
void addEvent(CommandLine& line);
void addPhoto(CommandLine& line);
void addVerify(CommandLine& line);
void addPin(CommandLine& line);
void addSigning(CommandLine& line);
void addClub(CommandLine& line);
void addMachine(CommandLine& line);
void addAdd(CommandLine& line);
void addChange(CommandLine& line);
void addMove(CommandLine& line);
void addRename(CommandLine& line);
void addEnd(CommandLine& line);
void addWords(CommandLine& line);
void addRemove(CommandLine& line);
void addRemoveRule(CommandLine& line);
void addErase(CommandLine& line);
void addMerge(CommandLine& line);
void addHub(CommandLine& line); ///< `hub prepare`, `hub add` …
void addHubExchange(CommandLine& line);
void addHubBoats(CommandLine& line);
void addBackup(CommandLine& line);
void addCopy(CommandLine& line);
void addRestore(CommandLine& line);
void addStocktake(CommandLine& line);
void addService(CommandLine& line);
void addAboard(CommandLine& line);
void addReceive(CommandLine& line);
void addFitOut(CommandLine& line);
void addRetag(CommandLine& line);
void addHappened(CommandLine& line);
void addWithdrawRecord(CommandLine& line);
void addWriteOff(CommandLine& line);
void addReinstate(CommandLine& line);
void addRelease(CommandLine& line);
void addMakeReady(CommandLine& line);
void addReplace(CommandLine& line);
void addLasting(CommandLine& line);
void addCompletion(CommandLine& line);
void addManual(CommandLine& line);

} // namespace app
