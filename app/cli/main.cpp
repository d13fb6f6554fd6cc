#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"

int main(int argc, char** argv) {
    app::CommandLine line;
    app::addCreate(line);
    app::addStarters(line);
    app::addImport(line);
    app::addExport(line);
    app::addRead(line);
    app::addCheck(line);
    app::addBoats(line);
    app::addMissing(line);
    app::addDue(line);
    app::addList(line);
    app::addCheckList(line);
    app::addTags(line);
    app::addScene(line);
    app::addLog(line);
    app::addLogAdd(line);
    app::addLogClose(line);
    app::addHistory(line);
    app::addEvent(line);
    app::addPhoto(line);
    app::addVerify(line);
    app::addPin(line);
    app::addSigning(line);
    app::addMachine(line);
    app::addAdd(line);
    app::addChange(line);
    app::addMove(line);
    app::addRename(line);
    app::addEnd(line);
    app::addErase(line);
    app::addMerge(line);
    app::addHub(line);
    app::addHubExchange(line);
    app::addHubBoats(line);
    app::addBackup(line);
    app::addCopy(line);
    app::addRestore(line);
    app::addStocktake(line);
    app::addService(line);
    app::addHappened(line);
    app::addWithdrawRecord(line);
    app::addAboard(line);
    app::addReceive(line);
    app::addFitOut(line);
    app::addRetag(line);
    app::addWriteOff(line);
    app::addReinstate(line);
    app::addRelease(line);
    app::addMakeReady(line);
    app::addReplace(line);
    app::addLasting(line);
    return line.run(argc, argv);
}
