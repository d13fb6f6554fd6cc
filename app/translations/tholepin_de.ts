<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ActWords</name>
    <message>
        <source>damage of %1</source>
        <translation>der Schaden an %1</translation>
    </message>
    <message>
        <source>that nobody is aboard</source>
        <translation>dass niemand an Bord ist</translation>
    </message>
    <message>
        <source>aboard: %1</source>
        <translation>an Bord: %1</translation>
    </message>
    <message>
        <source>point “%1”</source>
        <translation>Prüfpunkt „%1“</translation>
    </message>
    <message>
        <source>event “%1”</source>
        <translation>Einsatz „%1“</translation>
    </message>
    <message>
        <source>what was written of the trip</source>
        <translation>was zur Fahrt eingetragen war</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>%1 Next: %2.</source>
        <translation>%1 Als Nächstes: %2.</translation>
    </message>
    <message>
        <source>%1 Nothing is left to take back.</source>
        <translation>%1 Mehr gibt es nicht zurückzunehmen.</translation>
    </message>
    <message>
        <source>taken back in the check</source>
        <translation>in der Prüfung zurückgenommen</translation>
    </message>
    <message>
        <source>taken back by %1</source>
        <translation>zurückgenommen von %1</translation>
    </message>
    <message>
        <source>%1 at point “%2”</source>
        <translation>%1 beim Prüfpunkt „%2“</translation>
    </message>
</context>
<context>
    <name>BenchRound</name>
    <message>
        <source>unknown: %1</source>
        <translation>unbekannt: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>next due %1</source>
        <translation>wieder fällig am %1</translation>
    </message>
    <message>
        <source>serviceable again</source>
        <translation>wieder einsatzbereit</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>unknown tag</source>
        <translation>unbekanntes Etikett</translation>
    </message>
    <message>
        <source>This is no tag of this club.</source>
        <translation>Das ist kein Etikett dieses Vereins.</translation>
    </message>
    <message>
        <source>The register does not know this tag.</source>
        <translation>Das Verzeichnis kennt dieses Etikett nicht.</translation>
    </message>
    <message>
        <source>Its kit type has no rule of that name, or it lacks the part.</source>
        <translation>Für diese Art Ausrüstung gibt es keine Regel dieses Namens, oder das Teil fehlt.</translation>
    </message>
    <message>
        <source>It is written off: take it away.</source>
        <translation>Es ist ausgesondert: nicht mehr benutzen.</translation>
    </message>
    <message>
        <source>Already recorded for that day.</source>
        <translation>Für diesen Tag schon eingetragen.</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>It is not this club&apos;s kit.</source>
        <translation>Das ist keine Ausrüstung dieses Vereins.</translation>
    </message>
    <message>
        <source>Its kit type has no rule “%1”.</source>
        <translation>Für diese Art Ausrüstung gibt es keine Regel „%1“.</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>failed: it will be withdrawn</source>
        <translation>nicht bestanden: es wird gesperrt</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>not for this rule</source>
        <translation>nicht für diese Regel</translation>
    </message>
    <message>
        <source>recorded as failed, and withdrawn</source>
        <translation>als nicht bestanden eingetragen und gesperrt</translation>
    </message>
    <message>
        <source>recorded as passed</source>
        <translation>als bestanden eingetragen</translation>
    </message>
    <message>
        <source>%1 as failed</source>
        <translation>%1 als nicht bestanden</translation>
    </message>
    <message>
        <source>%1 not recorded</source>
        <translation>%1 nicht eingetragen</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Complete kit is not permission to launch: it does not show that boat, engine, crew or sea are fit.</source>
        <translation>Vollständige Ausrüstung ist keine Erlaubnis zum Auslaufen: Sie sagt nichts über Boot, Motor, Besatzung und See.</translation>
    </message>
    <message>
        <source>A scan shows that the tag was seen, not that the thing works: look at each thing and try it.</source>
        <translation>Ein Scan zeigt, dass das Etikett gesehen wurde, nicht, dass das Teil funktioniert: Jedes Teil ansehen und ausprobieren.</translation>
    </message>
    <message>
        <source>Sizes are a guide: the label on the jacket and a fit test decide.</source>
        <translation>Größen sind ein Anhalt: Es entscheiden das Etikett der Weste und die Anprobe.</translation>
    </message>
    <message>
        <source>The pressure afloat is a first estimate for a fixed volume: measure again on the water.</source>
        <translation>Der Druck im Wasser ist eine erste Schätzung bei festem Volumen: auf dem Wasser nachmessen.</translation>
    </message>
    <message>
        <source>Fix no tag where it hides a label, a seam, a valve or a moving part, or where glue harms the material: the maker&apos;s instructions prevail.</source>
        <translation>Kein Etikett dorthin kleben, wo es eine Aufschrift, eine Naht, ein Ventil oder ein bewegliches Teil verdeckt oder wo Kleber dem Material schadet: Die Angaben des Herstellers gehen vor.</translation>
    </message>
    <message>
        <source>The maker&apos;s instructions, local rules and the person in charge prevail.</source>
        <translation>Herstellerangaben, örtliche Regeln und die verantwortliche Person gehen vor.</translation>
    </message>
    <message>
        <source>Destroy its tag, now or when it turns up. Flares, cylinders and extinguishers go to whoever takes them by local rule.</source>
        <translation>Das Etikett vernichten, jetzt oder wenn das Teil wieder auftaucht. Seenotsignalmittel, Patronen und Feuerlöscher gehen dorthin, wo sie nach örtlicher Regel angenommen werden.</translation>
    </message>
    <message>
        <source>Kit, and the points of the last check, are all that is known here.</source>
        <translation>Hier sind nur die Ausrüstung und die Prüfpunkte der letzten Prüfung bekannt.</translation>
    </message>
    <message>
        <source>Nobody goes afloat without a life jacket that fits.</source>
        <translation>Niemand fährt ohne passende Rettungsweste hinaus.</translation>
    </message>
    <message>
        <source>Engine run: propeller guard on, kill cord on, water to the intake, nobody near.</source>
        <translation>Motorlauf: Propellerschutz montiert, Notstoppleine angelegt, Wasser am Einlass, niemand in der Nähe.</translation>
    </message>
    <message>
        <source>The plan goes by the register and by where tags were seen last. It does not know sizes, nor whose kit it is, and an open log entry does not hold an item back: check each boat when its kit is aboard.</source>
        <translation>Der Plan richtet sich nach dem Verzeichnis und danach, wo Etiketten zuletzt gesehen wurden. Er kennt keine Größen und nicht, wem etwas gehört, und ein offener Logbucheintrag hält kein Stück zurück: Jedes Boot prüfen, wenn seine Ausrüstung an Bord ist.</translation>
    </message>
    <message>
        <source>Service and release only by whoever the maker&apos;s manual and local rules allow, often a workshop.</source>
        <translation>Wartung und Freigabe nur durch die, denen die Anleitung des Herstellers und örtliche Regeln es erlauben, oft eine Werkstatt.</translation>
    </message>
    <message>
        <source>Rearm with a new cylinder and a new auto-inflator, never with used ones; the maker&apos;s manual says which.</source>
        <translation>Nach dem Auslösen eine neue Patrone und einen neuen Auslöser einsetzen, nie gebrauchte; welche, steht in der Anleitung des Herstellers.</translation>
    </message>
    <message>
        <source>Of rules with a tolerance, or that let kit without a date count: the maker and local rules may not allow it.</source>
        <translation>Zu Regeln mit einer Toleranz oder nach denen Ausrüstung ohne Datum zählt: Hersteller und örtliche Regeln erlauben das vielleicht nicht.</translation>
    </message>
    <message>
        <source>That kit lasts longer here than its rule allows is no reason to lengthen the rule.</source>
        <translation>Dass Ausrüstung hier länger hält, als ihre Regel erlaubt, ist kein Grund, die Regel zu verlängern.</translation>
    </message>
    <message>
        <source>Where a day printed on the thing and a rule differ, the earlier day holds.</source>
        <translation>Wo ein aufgedruckter Tag und eine Regel verschieden sind, gilt der frühere.</translation>
    </message>
    <message>
        <source>Look at it before it goes aboard, and give it a new tag if its old one was destroyed.</source>
        <translation>Ansehen, bevor es an Bord geht, und ein neues Etikett anbringen, wenn das alte vernichtet wurde.</translation>
    </message>
</context>
<context>
    <name>CheckList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Kit, aboard</source>
        <translation>Ausrüstung, an Bord</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>%1 · check list of %2, as asked on %3</source>
        <translation>%1 · Prüfliste von %2, verlangt am %3</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>launched at</source>
        <translation>ausgelaufen um</translation>
    </message>
    <message>
        <source>back at</source>
        <translation>zurück um</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>Bootsführer</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Besatzung</translation>
    </message>
    <message>
        <source>Nothing is open in the log</source>
        <translation>Im Logbuch ist nichts offen</translation>
    </message>
    <message>
        <source>Open in the log</source>
        <translation>Im Logbuch offen</translation>
    </message>
    <message>
        <source>Before the launch</source>
        <translation>Vor dem Auslaufen</translation>
    </message>
    <message>
        <source>After the return</source>
        <translation>Nach der Rückkehr</translation>
    </message>
    <message>
        <source>What is ticked here is in no record yet: type it into the program when it runs again.</source>
        <translation>Was hier abgehakt ist, ist noch nirgends aufgezeichnet: ins Programm eintippen, sobald es wieder läuft.</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>person in charge</source>
        <translation>verantwortliche Person</translation>
    </message>
    <message>
        <source>Check list of %1</source>
        <translation>Prüfliste von %1</translation>
    </message>
    <message>
        <source>%1, not required</source>
        <translation>%1, nicht Pflicht</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, one for each on board</source>
        <translation>%1, für jeden an Bord</translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <translation>%1, oder %2</translation>
    </message>
    <message>
        <source>%1 · as asked on %2</source>
        <translation>%1 · verlangt am %2</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>* common practice, no published source.</source>
        <translation>* gängige Praxis, ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Wall card of %1</source>
        <translation>Wandkarte von %1</translation>
    </message>
</context>
<context>
    <name>CheckPrintout</name>
    <message>
        <source>signature: %1</source>
        <translation>Unterschrift: %1</translation>
    </message>
    <message>
        <source>person in charge</source>
        <translation>verantwortliche Person</translation>
    </message>
    <message>
        <source>record %1 · %2</source>
        <translation>Protokoll %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Urgent: %1</source>
        <translation>Dringend: %1</translation>
    </message>
    <message>
        <source>log entry open: %1</source>
        <translation>offener Logbucheintrag: %1</translation>
    </message>
    <message>
        <source>driver %1</source>
        <translation>Bootsführer %1</translation>
    </message>
    <message>
        <source>crew %1</source>
        <translation>Besatzung %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>unterschrieben von %1</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>trip: %1</source>
        <translation>Fahrt: %1</translation>
    </message>
</context>
<context>
    <name>CheckRows</name>
    <message>
        <source>still to find</source>
        <translation>fehlt noch</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eins</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>nicht vorgeschrieben</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>look at this</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>fit not checked</source>
        <translation>Größe nicht geprüft</translation>
    </message>
    <message>
        <source>owner not checked</source>
        <translation>nicht geprüft, wem es gehört</translation>
    </message>
    <message>
        <source>unknown tag</source>
        <translation>unbekanntes Etikett</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>ask %1</source>
        <translation>%1 fragen</translation>
    </message>
    <message>
        <source>%1&apos;s own</source>
        <translation>eigenes Teil von %1</translation>
    </message>
    <message>
        <source>for %1: fit not checked</source>
        <translation>für %1: Größe nicht geprüft</translation>
    </message>
    <message>
        <source>for %1: size %2, fit not checked</source>
        <translation>für %1: Größe %2, nicht geprüft</translation>
    </message>
    <message>
        <source>for %1: size %2 fits by the club&apos;s table</source>
        <translation>für %1: Größe %2 passt nach Tabelle</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>about %1 kPa afloat, a first estimate</source>
        <translation>etwa %1 kPa im Wasser, eine erste Schätzung</translation>
    </message>
</context>
<context>
    <name>Choosers</name>
    <message>
        <source>Club files (*.tholepin);;All files (*)</source>
        <translation>Vereinsdateien (*.tholepin);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Start a new club file</source>
        <translation>Neue Vereinsdatei anlegen</translation>
    </message>
    <message>
        <source>Open a club file</source>
        <translation>Vereinsdatei öffnen</translation>
    </message>
    <message>
        <source>A folder of CSV files to import</source>
        <translation>Ordner mit CSV-Dateien einlesen</translation>
    </message>
    <message>
        <source>A video or pictures to read</source>
        <translation>Video oder Bilder auslesen</translation>
    </message>
    <message>
        <source>A folder of pictures to read</source>
        <translation>Ordner mit Bildern auslesen</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation>Als Datei speichern</translation>
    </message>
    <message>
        <source>A folder to write the register&apos;s CSV files to</source>
        <translation>Ein Ordner für die CSV-Dateien des Verzeichnisses</translation>
    </message>
    <message>
        <source>A backup to restore from</source>
        <translation>Eine Sicherung zum Wiederherstellen</translation>
    </message>
    <message>
        <source>A folder for a copy after each signed check</source>
        <translation>Ein Ordner für eine Kopie nach jeder unterschriebenen Prüfung</translation>
    </message>
    <message>
        <source>A spreadsheet to import</source>
        <translation>Eine Tabelle einlesen</translation>
    </message>
    <message>
        <source>Spreadsheets (*.xlsx *.ods *.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen (*.xlsx *.ods *.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The club file of another machine</source>
        <translation>Die Vereinsdatei eines anderen Geräts</translation>
    </message>
</context>
<context>
    <name>ClubLog</name>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source> · stops it until it is closed</source>
        <translation> · sperrt, bis der Eintrag erledigt ist</translation>
    </message>
    <message>
        <source>
Closed %1: %2</source>
        <translation>
Erledigt am %1: %2</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>No entry is open.</source>
        <translation>Kein Eintrag ist offen.</translation>
    </message>
    <message>
        <source>%1, %2 of them stopping a boat or item.</source>
        <translation>%1, davon sperren %2 ein Boot oder Stück.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
</context>
<context>
    <name>ContractWords</name>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>Copies</name>
    <message>
        <source>The newest backup was made %1.</source>
        <translation>Die neueste Sicherung entstand %1.</translation>
    </message>
    <message>
        <source>No backup of this club file was made on this machine yet.</source>
        <translation>Von dieser Vereinsdatei wurde auf diesem Gerät noch keine Sicherung gemacht.</translation>
    </message>
</context>
<context>
    <name>DueCalendar</name>
    <message>
        <source>no size</source>
        <translation>ohne Größe</translation>
    </message>
    <message>
        <source>other kit</source>
        <translation>übrige Ausrüstung</translation>
    </message>
    <message>
        <source>overdue, undated or due now</source>
        <translation>überschritten, ohne Datum oder jetzt fällig</translation>
    </message>
    <message>
        <source>does not count any more</source>
        <translation>zählt nicht mehr</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>due soon, or with a remark</source>
        <translation>bald fällig, oder mit Hinweis</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source> · %1</source>
        <translation> · %1</translation>
    </message>
    <message>
        <source>%1: %2; %3.</source>
        <translation>%1: %2; %3.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: nothing.</source>
        <translation>%1: nichts.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Nothing falls due in 24 months.</source>
        <translation>In 24 Monaten wird nichts fällig.</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überschritten</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>there is no boat &apos;%1&apos; in this club</source>
        <translation>das Boot „%1“ gibt es in diesem Verein nicht</translation>
    </message>
    <message>
        <source>import boats first</source>
        <translation>erst Boote einlesen</translation>
    </message>
    <message>
        <source>there is no class of boat &apos;%1&apos; in this club</source>
        <translation>die Bootsklasse „%1“ gibt es in diesem Verein nicht</translation>
    </message>
    <message>
        <source>name a class as it stands in boats.csv</source>
        <translation>eine Klasse nennen, wie sie in boats.csv steht</translation>
    </message>
    <message>
        <source>there is no place &apos;%1&apos; in this club</source>
        <translation>den Ort „%1“ gibt es in diesem Verein nicht</translation>
    </message>
    <message>
        <source>import places first</source>
        <translation>erst Orte einlesen</translation>
    </message>
    <message>
        <source>name a place as it stands in places.csv</source>
        <translation>einen Ort nennen, wie er in places.csv steht</translation>
    </message>
    <message>
        <source>there is no &apos;%1&apos; among the club&apos;s people</source>
        <translation>„%1“ gehört nicht zu den Leuten des Vereins</translation>
    </message>
    <message>
        <source>give a name as it stands in people.csv</source>
        <translation>einen Namen angeben, wie er in people.csv steht</translation>
    </message>
    <message>
        <source>name a person as people.csv has them</source>
        <translation>eine Person so nennen, wie sie in people.csv steht</translation>
    </message>
    <message>
        <source>there is no kit type &apos;%1&apos; in this club</source>
        <translation>die Art „%1“ gibt es in diesem Verein nicht</translation>
    </message>
    <message>
        <source>name a kit type as it stands in kit_types.csv</source>
        <translation>eine Art nennen, wie sie in kit_types.csv steht</translation>
    </message>
    <message>
        <source>%1 has no size &apos;%2&apos;</source>
        <translation>%1 gibt es nicht in Größe „%2“</translation>
    </message>
    <message>
        <source>name a size as it stands in sizes.csv</source>
        <translation>eine Größe nennen, wie sie in sizes.csv steht</translation>
    </message>
    <message>
        <source>no item of this club has the tag %1</source>
        <translation>kein Stück dieses Vereins hat den Code %1</translation>
    </message>
    <message>
        <source>give a tag code of the register</source>
        <translation>einen Code aus dem Verzeichnis angeben</translation>
    </message>
    <message>
        <source>look the code up in the register</source>
        <translation>den Code im Verzeichnis nachschlagen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag code, boat or person of this club</source>
        <translation>„%1“ ist kein Code, kein Boot und keine Person dieses Vereins</translation>
    </message>
    <message>
        <source>give a tag code, a boat&apos;s name or a person&apos;s name as the register has it</source>
        <translation>einen Code, ein Boot oder eine Person so angeben, wie es im Verzeichnis steht</translation>
    </message>
    <message>
        <source>there is no check %1</source>
        <translation>die Prüfung %1 gibt es nicht</translation>
    </message>
    <message>
        <source>open a check of a boat first</source>
        <translation>erst eine Prüfung eines Boots öffnen</translation>
    </message>
    <message>
        <source>this check is signed</source>
        <translation>diese Prüfung ist schon unterschrieben</translation>
    </message>
    <message>
        <source>open a new check of the boat</source>
        <translation>eine neue Prüfung des Boots öffnen</translation>
    </message>
    <message>
        <source>%1 was not seen in this check</source>
        <translation>%1 wurde in dieser Prüfung nicht gesehen</translation>
    </message>
    <message>
        <source>name a point as it stands in points.csv</source>
        <translation>einen Prüfpunkt nennen, wie er in points.csv steht</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is looked at, not measured</source>
        <translation>„%1“ wird angesehen, nicht gemessen</translation>
    </message>
    <message>
        <source>give `done`</source>
        <translation>`done` angeben</translation>
    </message>
    <message>
        <source>the kit is incomplete</source>
        <translation>die Ausrüstung ist unvollständig</translation>
    </message>
    <message>
        <source>give the reason of an urgent launch</source>
        <translation>den Grund für das dringende Auslaufen angeben</translation>
    </message>
    <message>
        <source>no tag of this club was read in this stocktake</source>
        <translation>in dieser Inventur wurde kein Etikett dieses Vereins gelesen</translation>
    </message>
    <message>
        <source>look whether the scanner works, and scan what is there</source>
        <translation>nachsehen, ob der Scanner geht, und scannen, was da ist</translation>
    </message>
    <message>
        <source>an event has a name</source>
        <translation>ein Einsatz hat einen Namen</translation>
    </message>
    <message>
        <source>name the patrol or training day</source>
        <translation>die Wache oder den Übungstag nennen</translation>
    </message>
    <message>
        <source>no check was filed under &apos;%1&apos;</source>
        <translation>unter „%1“ ist keine Prüfung abgelegt</translation>
    </message>
    <message>
        <source>give the name that checks were filed under with --event, or a day</source>
        <translation>den Namen angeben, unter dem Prüfungen abgelegt sind, oder einen Tag</translation>
    </message>
    <message>
        <source>hours run are from 0 to 10000</source>
        <translation>Motorstunden sind 0 bis 10000</translation>
    </message>
    <message>
        <source>read the hour counter again</source>
        <translation>den Stundenzähler noch einmal ablesen</translation>
    </message>
    <message>
        <source>launches are from 1 to 1000</source>
        <translation>Wasserungen sind 1 bis 1000</translation>
    </message>
    <message>
        <source>count them again</source>
        <translation>noch einmal zählen</translation>
    </message>
    <message>
        <source>the boat was back before it left</source>
        <translation>das Boot war zurück, bevor es auslief</translation>
    </message>
    <message>
        <source>look at the two times</source>
        <translation>die beiden Zeiten prüfen</translation>
    </message>
    <message>
        <source>kit has its home on a boat or at a place, not both</source>
        <translation>Ausrüstung gehört auf ein Boot oder an einen Ort, nicht beides</translation>
    </message>
    <message>
        <source>give one of the two</source>
        <translation>eins von beiden angeben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no day</source>
        <translation>„%1“ ist kein Tag</translation>
    </message>
    <message>
        <source>write it like 2026-03-14, 2026-03 or 2026</source>
        <translation>so schreiben wie 2026-03-14, 2026-03 oder 2026</translation>
    </message>
    <message>
        <source>from 1 to 1000 items are registered at once</source>
        <translation>auf einmal werden 1 bis 1000 Stück aufgenommen</translation>
    </message>
    <message>
        <source>give another number</source>
        <translation>eine andere Zahl angeben</translation>
    </message>
    <message>
        <source>the label %1 has no serial number, so it names no single item</source>
        <translation>das Etikett %1 hat keine Seriennummer und benennt deshalb kein einzelnes Stück</translation>
    </message>
    <message>
        <source>register it by number instead</source>
        <translation>stattdessen nach Anzahl aufnehmen</translation>
    </message>
    <message>
        <source>serial %1 is registered already as %2</source>
        <translation>Seriennummer %1 ist schon aufgenommen als %2</translation>
    </message>
    <message>
        <source>take it out of the list</source>
        <translation>aus der Liste nehmen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not possible as a reason</source>
        <translation>„%1“ ist als Grund nicht möglich</translation>
    </message>
    <message>
        <source>it is written off already</source>
        <translation>es ist schon ausgesondert</translation>
    </message>
    <message>
        <source>only an unserviceable item is released</source>
        <translation>freigegeben wird nur, was gesperrt ist</translation>
    </message>
    <message>
        <source>a manifest asks for no less than nothing</source>
        <translation>eine Packliste verlangt nicht weniger als nichts</translation>
    </message>
    <message>
        <source>write 0 or more</source>
        <translation>0 oder mehr schreiben</translation>
    </message>
    <message>
        <source>the line of %1 was changed meanwhile</source>
        <translation>die Zeile für %1 wurde inzwischen geändert</translation>
    </message>
    <message>
        <source>look at it again, then save it</source>
        <translation>noch einmal ansehen, dann speichern</translation>
    </message>
    <message>
        <source>a log entry says nothing</source>
        <translation>der Eintrag sagt nichts</translation>
    </message>
    <message>
        <source>write what was seen</source>
        <translation>schreiben, was gesehen wurde</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no boat and no item of this club</source>
        <translation>„%1“ ist kein Boot und kein Stück dieses Vereins</translation>
    </message>
    <message>
        <source>give a boat&apos;s name or a tag code</source>
        <translation>ein Boot oder einen Code angeben</translation>
    </message>
    <message>
        <source>this log entry was closed on %1</source>
        <translation>dieser Eintrag wurde am %1 erledigt</translation>
    </message>
    <message>
        <source>write a new entry</source>
        <translation>einen neuen Eintrag schreiben</translation>
    </message>
    <message>
        <source>there is no log entry %1</source>
        <translation>den Eintrag %1 gibt es nicht</translation>
    </message>
    <message>
        <source>give the id that `log` shows</source>
        <translation>die Kennung angeben, die `log` zeigt</translation>
    </message>
    <message>
        <source>give the day on which it was done</source>
        <translation>den Tag angeben, an dem es getan wurde</translation>
    </message>
    <message>
        <source>no kit type of this club has a rule &apos;%1&apos;</source>
        <translation>keine Art dieses Vereins hat eine Regel „%1“</translation>
    </message>
    <message>
        <source>name a rule as it stands in life_rules.csv</source>
        <translation>eine Regel nennen, wie sie in life_rules.csv steht</translation>
    </message>
    <message>
        <source>a horizon of %1 months is not possible</source>
        <translation>%1 Monate voraus ist nicht möglich</translation>
    </message>
    <message>
        <source>give 1 to 1200</source>
        <translation>1 bis 1200 angeben</translation>
    </message>
    <message>
        <source>a confidence of %1 is not possible</source>
        <translation>eine Sicherheit von %1 ist nicht möglich</translation>
    </message>
    <message>
        <source>give a number above 0 and below 1, like 0.95</source>
        <translation>eine Zahl über 0 und unter 1 angeben, etwa 0,95</translation>
    </message>
    <message>
        <source>a cover of %1 months is not possible</source>
        <translation>für %1 Monate bestellen ist nicht möglich</translation>
    </message>
    <message>
        <source>give 0 to 1200</source>
        <translation>0 bis 1200 angeben</translation>
    </message>
    <message>
        <source>a margin of %1 days is not possible</source>
        <translation>%1 Tage Reserve ist nicht möglich</translation>
    </message>
    <message>
        <source>give 0 to 3650</source>
        <translation>0 bis 3650 angeben</translation>
    </message>
    <message>
        <source>losses and item-years believed beforehand are more than 0</source>
        <translation>vorab angenommene Verluste und Stückjahre sind mehr als 0</translation>
    </message>
    <message>
        <source>give both, like 0.5 in 10</source>
        <translation>beide angeben, etwa 0,5 in 10</translation>
    </message>
    <message>
        <source>&apos;%1&apos; does not begin with K, B, P, C or S</source>
        <translation>„%1“ beginnt nicht mit K, B, P, C oder S</translation>
    </message>
    <message>
        <source>&apos;%1&apos; holds a character that no tag code has</source>
        <translation>in „%1“ ist ein Zeichen, das in keinem Code vorkommt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; fails its check character</source>
        <translation>„%1“ passt nicht zu seinem Prüfzeichen</translation>
    </message>
    <message>
        <source>type the ten characters under the tag</source>
        <translation>die zehn Zeichen unter dem Etikett tippen</translation>
    </message>
    <message>
        <source>one character is probably wrong: compare it with the ten characters under the tag</source>
        <translation>wahrscheinlich ist ein Zeichen falsch: mit den zehn Zeichen unter dem Etikett vergleichen</translation>
    </message>
    <message>
        <source>compare the text beneath the maker&apos;s symbol, or type the tag code</source>
        <translation>mit dem Text unter dem Symbol des Herstellers vergleichen oder den Code tippen</translation>
    </message>
    <message>
        <source>the label holds no element</source>
        <translation>das Etikett enthält kein Element</translation>
    </message>
    <message>
        <source>&apos;%1&apos; begins no element that is known here</source>
        <translation>mit „%1“ beginnt kein Element, das hier bekannt ist</translation>
    </message>
    <message>
        <source>a bracket of the label is not closed</source>
        <translation>eine Klammer des Etiketts ist nicht geschlossen</translation>
    </message>
    <message>
        <source>&apos;(%1)&apos; is no element that is known here</source>
        <translation>„(%1)“ ist kein Element, das hier bekannt ist</translation>
    </message>
    <message>
        <source>the label says two things for element (%1)</source>
        <translation>das Etikett sagt zweierlei zu Element (%1)</translation>
    </message>
    <message>
        <source>the file exists</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>choose another name, or move the old file away</source>
        <translation>einen anderen Namen wählen oder die alte Datei wegräumen</translation>
    </message>
    <message>
        <source>the file cannot be made: %1</source>
        <translation>die Datei lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>see that the folder is there and writable</source>
        <translation>nachsehen, ob der Ordner da und beschreibbar ist</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>die Datei gibt es nicht</translation>
    </message>
    <message>
        <source>give the path of a club file, or create one</source>
        <translation>eine Vereinsdatei wählen oder eine anlegen</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>this is not a club file</source>
        <translation>das ist keine Vereinsdatei</translation>
    </message>
    <message>
        <source>give the path of a club file</source>
        <translation>eine Vereinsdatei wählen</translation>
    </message>
    <message>
        <source>the making of this club file was cut short and nothing is in it</source>
        <translation>das Anlegen dieser Vereinsdatei brach ab, und es steht nichts darin</translation>
    </message>
    <message>
        <source>remove it and create it again</source>
        <translation>löschen und neu anlegen</translation>
    </message>
    <message>
        <source>the club file has format %1, this program knows %2</source>
        <translation>die Vereinsdatei hat Format %1, dieses Programm kennt %2</translation>
    </message>
    <message>
        <source>use a newer Tholepin; the file was not touched</source>
        <translation>ein neueres Tholepin benutzen; die Datei blieb, wie sie war</translation>
    </message>
    <message>
        <source>close the other program that has the club file open and try again</source>
        <translation>das andere Programm schließen, das die Vereinsdatei offen hat, und noch einmal versuchen</translation>
    </message>
    <message>
        <source>restore the newest backup, and keep the damaged file for inspection</source>
        <translation>die neueste Sicherung zurückholen und die beschädigte Datei zum Nachsehen aufheben</translation>
    </message>
    <message>
        <source>see that the disk is there, writable and not full</source>
        <translation>nachsehen, ob der Datenträger da, beschreibbar und nicht voll ist</translation>
    </message>
    <message>
        <source>the record is damaged: %1</source>
        <translation>das Protokoll ist beschädigt: %1</translation>
    </message>
    <message>
        <source>take an older backup, or look at it with `verify`</source>
        <translation>eine ältere Sicherung nehmen oder mit `verify` nachsehen</translation>
    </message>
    <message>
        <source>this machine gives no random numbers</source>
        <translation>dieses Gerät liefert keine Zufallszahlen</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>something that is no file stands in the way</source>
        <translation>etwas, das keine Datei ist, steht im Weg</translation>
    </message>
    <message>
        <source>the file cannot be written: %1</source>
        <translation>die Datei lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the sheet cannot be written: %1</source>
        <translation>das Blatt lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the file cannot be replaced: %1</source>
        <translation>die Datei lässt sich nicht ersetzen: %1</translation>
    </message>
    <message>
        <source>check the folder, its permissions and the free space</source>
        <translation>Ordner, Rechte und freien Platz prüfen</translation>
    </message>
    <message>
        <source>choose another place, or make room</source>
        <translation>anderswo speichern oder Platz schaffen</translation>
    </message>
    <message>
        <source>correct the name</source>
        <translation>den Namen berichtigen</translation>
    </message>
    <message>
        <source>the folder cannot be read: %1</source>
        <translation>der Ordner lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>the folder holds no CSV file</source>
        <translation>im Ordner ist keine CSV-Datei</translation>
    </message>
    <message>
        <source>name a folder that holds the register&apos;s CSV files</source>
        <translation>einen Ordner mit den CSV-Dateien des Verzeichnisses wählen</translation>
    </message>
    <message>
        <source>fact %1 of machine %2</source>
        <translation>Zeile %1 von Gerät %2</translation>
    </message>
    <message>
        <source>table %1</source>
        <translation>Tabelle %1</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>it does not follow the fact before it</source>
        <translation>sie folgt nicht auf die Zeile davor</translation>
    </message>
    <message>
        <source>its body is not as it was written</source>
        <translation>ihr Inhalt ist nicht, wie er geschrieben wurde</translation>
    </message>
    <message>
        <source>it was changed after it was written</source>
        <translation>sie wurde nach dem Schreiben geändert</translation>
    </message>
    <message>
        <source>database is locked</source>
        <translation>ein anderes Programm hält die Vereinsdatei</translation>
    </message>
    <message>
        <source>file is not a database</source>
        <translation>das ist keine Vereinsdatei</translation>
    </message>
    <message>
        <source>database disk image is malformed</source>
        <translation>die Vereinsdatei ist beschädigt</translation>
    </message>
    <message>
        <source>attempt to write a readonly database</source>
        <translation>die Vereinsdatei lässt sich nur lesen</translation>
    </message>
    <message>
        <source>unable to open database file</source>
        <translation>die Vereinsdatei lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>disk I/O error</source>
        <translation>der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <source>database or disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>keine Berechtigung</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>Not a directory</source>
        <translation>das ist kein Ordner</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>dort lässt sich nur lesen</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>kein Platz mehr</translation>
    </message>
    <message>
        <source>it is no file that can be read: replace it or take it out of the folder</source>
        <translation>keine Datei, die sich lesen lässt: ersetzen oder aus dem Ordner nehmen</translation>
    </message>
    <message>
        <source>the file is larger than 256 MB: it cannot be a register</source>
        <translation>die Datei ist größer als 256 MB: Sie kann kein Verzeichnis sein</translation>
    </message>
    <message>
        <source>the file cannot be read: check its permissions</source>
        <translation>die Datei lässt sich nicht lesen: Rechte prüfen</translation>
    </message>
    <message>
        <source>unknown file: rename it or take it out; the register&apos;s files are %1</source>
        <translation>unbekannte Datei: umbenennen oder herausnehmen; die Dateien des Verzeichnisses sind %1</translation>
    </message>
    <message>
        <source>the file is there twice, with small and capital letters: keep one</source>
        <translation>die Datei ist zweimal da, klein und groß geschrieben: eine behalten</translation>
    </message>
    <message>
        <source>the file is UTF-16: save it as UTF-8</source>
        <translation>die Datei ist UTF-16: als UTF-8 speichern</translation>
    </message>
    <message>
        <source>the file has no header row: write the names of the columns in row 1</source>
        <translation>die Datei hat keine Kopfzeile: die Namen der Spalten in Zeile 1 schreiben</translation>
    </message>
    <message>
        <source>the cells are not separated by commas: save the file with commas between them</source>
        <translation>die Zellen sind nicht durch Kommas getrennt: die Datei mit Kommas dazwischen speichern</translation>
    </message>
    <message>
        <source>a quote mark stands in the middle of a cell: put the whole cell in quotes and double each quote mark inside it</source>
        <translation>ein Anführungszeichen steht mitten in einer Zelle: die ganze Zelle in Anführungszeichen setzen und jedes darin verdoppeln</translation>
    </message>
    <message>
        <source>a cell begins with a quote mark and never ends: close the quotes</source>
        <translation>eine Zelle beginnt mit einem Anführungszeichen und endet nie: das schließende setzen</translation>
    </message>
    <message>
        <source>column %1 has no name: name it or take it out</source>
        <translation>Spalte %1 hat keinen Namen: benennen oder herausnehmen</translation>
    </message>
    <message>
        <source>the column %1 is missing: it names the row, so add it</source>
        <translation>die Spalte %1 fehlt: Sie benennt die Zeile, also hinzufügen</translation>
    </message>
    <message>
        <source>the %1 is missing: it names the row, so fill it in</source>
        <translation>%1 fehlt: Es benennt die Zeile, also ausfüllen</translation>
    </message>
    <message>
        <source>each of %1 and %2 is given: fill in exactly one of them</source>
        <translation>%1 und %2 sind beide angegeben: genau eins davon ausfüllen</translation>
    </message>
    <message>
        <source>none of %1 and %2 is given: fill in exactly one of them</source>
        <translation>weder %1 noch %2 ist angegeben: genau eins davon ausfüllen</translation>
    </message>
    <message>
        <source>no unused tag code could be found: fill in a code</source>
        <translation>es fand sich kein freier Code: einen Code eintragen</translation>
    </message>
    <message>
        <source>row %1 has the same key: keep one of them</source>
        <translation>Zeile %1 hat denselben Schlüssel: eine behalten</translation>
    </message>
    <message>
        <source>%1 is too large: write at most %2</source>
        <translation>%1 ist zu groß: höchstens %2 schreiben</translation>
    </message>
    <message>
        <source>the %1 is missing: fill it in</source>
        <translation>%1 fehlt: ausfüllen</translation>
    </message>
    <message>
        <source>%1 %2 is above %3 %4: exchange or correct them</source>
        <translation>%1 %2 liegt über %3 %4: tauschen oder berichtigen</translation>
    </message>
    <message>
        <source>a pack of 0 holds nothing: write 1 or more</source>
        <translation>eine Packung mit 0 enthält nichts: 1 oder mehr schreiben</translation>
    </message>
    <message>
        <source>a rule of kind after_event waits for an event: name it</source>
        <translation>eine Regel der Art after_event wartet auf ein Ereignis: es nennen</translation>
    </message>
    <message>
        <source>only a rule of kind after_event waits for an event: leave the cell empty</source>
        <translation>nur eine Regel der Art after_event wartet auf ein Ereignis: die Zelle leer lassen</translation>
    </message>
    <message>
        <source>a rule of kind %1 counts nothing: leave the cell empty</source>
        <translation>eine Regel der Art %1 zählt nichts: die Zelle leer lassen</translation>
    </message>
    <message>
        <source>a rule of kind %1 needs a number above 0</source>
        <translation>eine Regel der Art %1 braucht eine Zahl über 0</translation>
    </message>
    <message>
        <source>%1 is not whole: a rule of kind %2 needs a whole number</source>
        <translation>%1 ist nicht ganz: Eine Regel der Art %2 braucht eine ganze Zahl</translation>
    </message>
    <message>
        <source>a rule of kind %1 does not count from a record, so it has no steps: leave the cell empty</source>
        <translation>eine Regel der Art %1 zählt nicht ab einem Nachweis und hat deshalb keine Stufen: die Zelle leer lassen</translation>
    </message>
    <message>
        <source>steps of kind %1 need whole numbers, at most 12000</source>
        <translation>Stufen der Art %1 brauchen ganze Zahlen, höchstens 12000</translation>
    </message>
    <message>
        <source>the day it was made, %1, is still to come</source>
        <translation>der Tag der Herstellung, %1, kommt erst noch</translation>
    </message>
    <message>
        <source>give the day on its label</source>
        <translation>den Tag vom Etikett angeben</translation>
    </message>
    <message>
        <source>the day of its first use, %1, is still to come</source>
        <translation>der Tag der ersten Benutzung, %1, kommt erst noch</translation>
    </message>
    <message>
        <source>leave it out until it is used</source>
        <translation>weglassen, bis es benutzt wird</translation>
    </message>
    <message>
        <source>it was first used %1, before it was made %2</source>
        <translation>erste Benutzung %1, aber Herstellung erst %2</translation>
    </message>
    <message>
        <source>give the days on its label</source>
        <translation>die Tage vom Etikett angeben</translation>
    </message>
    <message>
        <source>%1 %2 is written off</source>
        <translation>%1 %2 ist ausgesondert</translation>
    </message>
    <message>
        <source>nothing is left to do</source>
        <translation>es ist nichts mehr zu tun</translation>
    </message>
    <message>
        <source>look at its history</source>
        <translation>den Verlauf ansehen</translation>
    </message>
    <message>
        <source>the club file holds something that cannot be read: %1</source>
        <translation>in der Vereinsdatei steht etwas, das sich nicht lesen lässt: %1</translation>
    </message>
    <message>
        <source>look it over with verify, and restore a backup</source>
        <translation>mit verify durchsehen und eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>the point %1 was changed meanwhile</source>
        <translation>der Prüfpunkt %1 wurde inzwischen geändert</translation>
    </message>
    <message>
        <source>correct it, then save it again</source>
        <translation>berichtigen, dann noch einmal speichern</translation>
    </message>
    <message>
        <source>%1 has no line of its own for %2</source>
        <translation>%1 hat keine eigene Zeile für %2</translation>
    </message>
    <message>
        <source>it is asked as its class already</source>
        <translation>es wird schon wie bei der Klasse verlangt</translation>
    </message>
    <message>
        <source>give it another name, or change the one that is there</source>
        <translation>einen anderen Namen wählen oder den vorhandenen ändern</translation>
    </message>
    <message>
        <source>%1 is a point of the boat&apos;s class</source>
        <translation>%1 ist ein Prüfpunkt der Bootsklasse</translation>
    </message>
    <message>
        <source>rename it in the class, or add a point of another name</source>
        <translation>in der Klasse umbenennen oder einen mit anderem Namen anlegen</translation>
    </message>
    <message>
        <source>%1 has its own point %2</source>
        <translation>%1 hat einen eigenen Prüfpunkt %2</translation>
    </message>
    <message>
        <source>make it as the class first, then rename it</source>
        <translation>erst der Klasse angleichen, dann umbenennen</translation>
    </message>
    <message>
        <source>%1 has no point %2 of its own</source>
        <translation>%1 hat keinen eigenen Prüfpunkt %2</translation>
    </message>
    <message>
        <source>a boat cannot leave a point of its class out: write it as not required</source>
        <translation>ein Boot kann einen Prüfpunkt seiner Klasse nicht weglassen: als nicht Pflicht eintragen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no number: write it with a full stop, without a comma</source>
        <translation>„%1“ ist hier keine Zahl: mit Punkt schreiben, ohne Komma</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no number: write digits, with a full stop where needed</source>
        <translation>„%1“ ist keine Zahl: Ziffern schreiben, wo nötig mit Punkt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is negative: write 0 or more</source>
        <translation>„%1“ ist negativ: 0 oder mehr schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not whole: write a whole number</source>
        <translation>„%1“ ist nicht ganz: eine ganze Zahl schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is too large: write at most %2</source>
        <translation>„%1“ ist zu groß: höchstens %2 schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no day: write 2026-03-14, 2026-03 or 2026</source>
        <translation>„%1“ ist kein Tag: 2026-03-14, 2026-03 oder 2026 schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not in the calendar: write 2026-03-14, 2026-03 or 2026</source>
        <translation>„%1“ steht nicht im Kalender: 2026-03-14, 2026-03 oder 2026 schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not possible: write %2</source>
        <translation>„%1“ ist nicht möglich, möglich sind: %2</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag code of kit: write one that begins with K</source>
        <translation>„%1“ ist kein Code von Ausrüstung: einen schreiben, der mit K beginnt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag code of a boat: write one that begins with B</source>
        <translation>„%1“ ist kein Code eines Boots: einen schreiben, der mit B beginnt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag code of a person: write one that begins with P</source>
        <translation>„%1“ ist kein Code einer Person: einen schreiben, der mit P beginnt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no GTIN: write its 8, 12, 13 or 14 digits</source>
        <translation>„%1“ ist keine GTIN: ihre 8, 12, 13 oder 14 Ziffern schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; fails its check digit: compare it with the label</source>
        <translation>„%1“ passt nicht zu seiner Prüfziffer: mit dem Etikett vergleichen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; are no steps: write 108:12, several by rising age with ; between them and n above 0</source>
        <translation>„%1“ sind keine Stufen: 108:12 schreiben, mehrere nach steigendem Alter mit ; dazwischen und n über 0</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tolerance: write none, end_of_month or days such as 14d</source>
        <translation>„%1“ ist keine Toleranz: none, end_of_month oder Tage wie 14d schreiben</translation>
    </message>
    <message>
        <source>a manifest line for &apos;%1&apos; has substitutes that would no longer agree in %2: change the line&apos;s substitutes first</source>
        <translation>eine Packlistenzeile für „%1“ hat Ersatz, der in %2 nicht mehr übereinstimmen würde: erst den Ersatz der Zeile ändern</translation>
    </message>
    <message>
        <source>&apos;%1&apos; and &apos;%2&apos; do not agree in %3: a substitute must, so choose another</source>
        <translation>„%1“ und „%2“ stimmen in %3 nicht überein: Ersatz muss das, also anderen wählen</translation>
    </message>
    <message>
        <source>%1 is too large: write at most 12000</source>
        <translation>%1 ist zu groß: höchstens 12000 schreiben</translation>
    </message>
    <message>
        <source>the item has both a home boat, &apos;%1&apos;, and a home place, &apos;%2&apos;: keep one and write - in the other</source>
        <translation>das Stück gehört zu einem Boot, „%1“, und an einen Ort, „%2“: eins behalten und beim andern - schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has the tag &apos;%2&apos; already: correct one of them</source>
        <translation>„%1“ hat den Code „%2“ schon: eins von beiden berichtigen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has this gtin and the serial &apos;%2&apos; already: correct one of them</source>
        <translation>„%1“ hat diese GTIN und die Seriennummer „%2“ schon: eins von beiden berichtigen</translation>
    </message>
    <message>
        <source>no item &apos;%1&apos; in %2 or in the club file: correct it or add it there</source>
        <translation>das Stück „%1“ steht weder in %2 noch in der Vereinsdatei: berichtigen oder dort eintragen</translation>
    </message>
    <message>
        <source>no %1 &apos;%2&apos; in %3 or in the club file: correct it or add it there</source>
        <translation>%1 „%2“ steht weder in %3 noch in der Vereinsdatei: berichtigen oder dort eintragen</translation>
    </message>
    <message>
        <source>no size &apos;%1&apos; of kit_type &apos;%2&apos; in sizes.csv or in the club file: correct it or add it there</source>
        <translation>die Größe „%1“ der Art „%2“ steht weder in sizes.csv noch in der Vereinsdatei: berichtigen oder dort eintragen</translation>
    </message>
    <message>
        <source>no life rule &apos;%1&apos; without a part of kit_type &apos;%2&apos; in life_rules.csv or in the club file: correct it or add it there</source>
        <translation>die Regel „%1“ ohne Teil für die Art „%2“ steht weder in life_rules.csv noch in der Vereinsdatei: berichtigen oder dort eintragen</translation>
    </message>
    <message>
        <source>no life rule &apos;%1&apos; for the part &apos;%2&apos; of kit_type &apos;%3&apos; in life_rules.csv or in the club file: correct it or add it there</source>
        <translation>die Regel „%1“ zum Teil „%2“ für die Art „%3“ steht weder in life_rules.csv noch in der Vereinsdatei: berichtigen oder dort eintragen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no point of %2 at the launch</source>
        <translation>„%1“ ist kein Prüfpunkt von %2 (Auslaufen)</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no point of %2 at the return</source>
        <translation>„%1“ ist kein Prüfpunkt von %2 (Rückkehr)</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no point of %2 at the stocktake</source>
        <translation>„%1“ ist kein Prüfpunkt von %2 (Inventur)</translation>
    </message>
    <message>
        <source>unknown column &apos;%1&apos;: %2 has %3</source>
        <translation>unbekannte Spalte „%1“: %2 hat %3</translation>
    </message>
    <message>
        <source>the column &apos;%1&apos; is there twice: take one out</source>
        <translation>die Spalte „%1“ ist zweimal da: eine herausnehmen</translation>
    </message>
    <message>
        <source>there is a point %1 in the launch check already</source>
        <translation>einen Prüfpunkt %1 gibt es schon (Auslaufen)</translation>
    </message>
    <message>
        <source>there is a point %1 in the return check already</source>
        <translation>einen Prüfpunkt %1 gibt es schon (Rückkehr)</translation>
    </message>
    <message>
        <source>write it like 2026-03-14</source>
        <translation>so schreiben wie 2026-03-14</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no instant</source>
        <translation>„%1“ ist kein Zeitpunkt</translation>
    </message>
    <message>
        <source>write it like 2026-03-14T06:40:00Z</source>
        <translation>so schreiben wie 2026-03-14T06:40:00Z</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>write it like 2 or, for hours, 1.5</source>
        <translation>so schreiben wie 2 oder, bei Stunden, 1.5</translation>
    </message>
    <message>
        <source>the club knows nobody named &apos;%1&apos;</source>
        <translation>niemand im Verein heißt „%1“</translation>
    </message>
    <message>
        <source>write the name as people.csv has it</source>
        <translation>den Namen schreiben, wie er in people.csv steht</translation>
    </message>
    <message>
        <source>a trip is told when the boat is back</source>
        <translation>von einer Fahrt wird berichtet, wenn das Boot zurück ist</translation>
    </message>
    <message>
        <source>give times, hours and fuel with the return check</source>
        <translation>Zeiten, Stunden und Kraftstoff bei der Rückkehrprüfung angeben</translation>
    </message>
    <message>
        <source>the codes cannot be read</source>
        <translation>die Codes lassen sich nicht lesen</translation>
    </message>
    <message>
        <source>look at the path</source>
        <translation>Pfad prüfen</translation>
    </message>
    <message>
        <source>the points file cannot be read</source>
        <translation>die Datei der Prüfpunkte lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the header is not point,value</source>
        <translation>die Kopfzeile ist nicht point,value</translation>
    </message>
    <message>
        <source>write that as the first row</source>
        <translation>das als erste Zeile schreiben</translation>
    </message>
    <message>
        <source>the row has not two cells</source>
        <translation>die Zeile hat nicht zwei Zellen</translation>
    </message>
    <message>
        <source>write a point and its value</source>
        <translation>einen Prüfpunkt und seinen Wert schreiben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no point of this boat in this phase</source>
        <translation>„%1“ ist bei dieser Prüfung kein Prüfpunkt dieses Boots</translation>
    </message>
    <message>
        <source>write it as the manifest does</source>
        <translation>so schreiben, wie es in der Packliste steht</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no value for this point</source>
        <translation>„%1“ ist kein Wert für diesen Prüfpunkt</translation>
    </message>
    <message>
        <source>write done for a point that is looked at, and leave the row out while it is not</source>
        <translation>done schreiben, wenn der Prüfpunkt angesehen ist, und die Zeile bis dahin weglassen</translation>
    </message>
    <message>
        <source>write the number that was measured, with a full stop</source>
        <translation>die gemessene Zahl schreiben, mit Punkt</translation>
    </message>
    <message>
        <source>write the seconds that it ran</source>
        <translation>die Sekunden schreiben, die es lief</translation>
    </message>
    <message>
        <source>there is no such picture, video or folder</source>
        <translation>Bild, Video oder Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>the file may not be opened</source>
        <translation>die Datei darf nicht geöffnet werden</translation>
    </message>
    <message>
        <source>look at who may read it</source>
        <translation>Leserechte prüfen</translation>
    </message>
    <message>
        <source>it holds no picture and no video</source>
        <translation>darin ist kein Bild und kein Video</translation>
    </message>
    <message>
        <source>put the pictures there first</source>
        <translation>erst Bilder dort ablegen</translation>
    </message>
    <message>
        <source>it is neither a picture nor a video that can be read here</source>
        <translation>weder ein Bild noch ein Video, das hier gelesen werden kann</translation>
    </message>
    <message>
        <source>take the picture again, as JPEG or PNG</source>
        <translation>noch einmal aufnehmen, als JPEG oder PNG</translation>
    </message>
    <message>
        <source>the picture or video is damaged</source>
        <translation>Bild oder Video ist beschädigt</translation>
    </message>
    <message>
        <source>save it smaller</source>
        <translation>kleiner speichern</translation>
    </message>
    <message>
        <source>the picture cannot be written: %1</source>
        <translation>das Bild lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the folder cannot be made: %1</source>
        <translation>der Ordner lässt sich nicht anlegen: %1</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>anderswo speichern</translation>
    </message>
    <message>
        <source>the answer could not be written</source>
        <translation>die Antwort ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>make room where it goes</source>
        <translation>Platz schaffen, wo sie hingeht</translation>
    </message>
    <message>
        <source>the record of the manifests cannot be read: %3 is not there</source>
        <translation>die Packlisten lassen sich nicht aus dem Protokoll lesen: %3 fehlt</translation>
    </message>
    <message>
        <source>the record of the manifests cannot be read: %3 is &apos;%4&apos;</source>
        <translation>die Packlisten lassen sich nicht aus dem Protokoll lesen: %3 ist „%4“</translation>
    </message>
    <message>
        <source>facts %3 to %4 are not there</source>
        <translation>die Zeilen %3 bis %4 fehlen</translation>
    </message>
    <message>
        <source>differs from what the facts say, first at %2</source>
        <translation>weicht ab von dem, was das Protokoll sagt, zuerst bei %2</translation>
    </message>
    <message>
        <source>the club&apos;s boats are: %2</source>
        <translation>die Boote des Vereins sind: %2</translation>
    </message>
    <message>
        <source>the club&apos;s places are: %2</source>
        <translation>die Orte des Vereins sind: %2</translation>
    </message>
    <message>
        <source>no person &apos;%1&apos;</source>
        <translation>„%1“ gibt es unter den Leuten nicht</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has %2 characters where a tag code has 10</source>
        <translation>„%1“ hat %2 Zeichen, ein Code hat 10</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag of this club</source>
        <translation>„%1“ ist kein Etikett dieses Vereins</translation>
    </message>
    <message>
        <source>it is almost %2: compare it with the characters under the tag</source>
        <translation>es ist fast %2: mit den Zeichen unter dem Etikett vergleichen</translation>
    </message>
    <message>
        <source>element (%1) of the label: its length is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: Länge falsch in „%2“</translation>
    </message>
    <message>
        <source>element (%1) of the label: its character is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: Zeichen falsch in „%2“</translation>
    </message>
    <message>
        <source>element (%1) of the label: its check digit is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: Prüfziffer falsch in „%2“</translation>
    </message>
    <message>
        <source>element (%1) of the label: its month is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: Monat falsch in „%2“</translation>
    </message>
    <message>
        <source>element (%1) of the label: its day is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: Tag falsch in „%2“</translation>
    </message>
    <message>
        <source>element (%1) of the label: its first digit is wrong in &apos;%2&apos;</source>
        <translation>Element (%1) des Etiketts: erste Ziffer falsch in „%2“</translation>
    </message>
    <message>
        <source>the club file holds something that cannot be read: in %1 %2, %3 is &apos;%4&apos;</source>
        <translation>in der Vereinsdatei steht etwas, das sich nicht lesen lässt: in %1 %2 ist %3 „%4“</translation>
    </message>
    <message>
        <source>the club file holds something that cannot be read: %3 is not there</source>
        <translation>in der Vereinsdatei steht etwas, das sich nicht lesen lässt: %3 fehlt</translation>
    </message>
    <message>
        <source>the club file holds something that cannot be read: %3 is &apos;%4&apos;</source>
        <translation>in der Vereinsdatei steht etwas, das sich nicht lesen lässt: %3 ist „%4“</translation>
    </message>
    <message>
        <source>a check every 0 days cannot be: write 1 or more, or leave the cell empty</source>
        <translation>alle 0 Tage kann nicht geprüft werden: 1 oder mehr schreiben oder die Zelle leer lassen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is a tag&apos;s code and no reason</source>
        <translation>„%1“ ist der Code eines Etiketts und kein Grund</translation>
    </message>
    <message>
        <source>say why in words</source>
        <translation>den Grund in Worten sagen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; says too little</source>
        <translation>„%1“ sagt zu wenig</translation>
    </message>
    <message>
        <source>say why in words, of three letters at least</source>
        <translation>den Grund in Worten sagen, mit mindestens drei Buchstaben</translation>
    </message>
    <message>
        <source>no boat has the class &apos;%1&apos;: its manifest is asked of none</source>
        <translation>kein Boot hat die Klasse „%1“: ihre Packliste wird von keinem verlangt</translation>
    </message>
    <message>
        <source>the class &apos;%1&apos; is almost &apos;%2&apos;: if they are one, write them alike</source>
        <translation>die Klasse „%1“ heißt fast wie „%2“: wenn es eine ist, beide gleich schreiben</translation>
    </message>
    <message>
        <source>the kit type &apos;%1&apos; is almost &apos;%2&apos;: if they are one, write them alike</source>
        <translation>die Art „%1“ heißt fast wie „%2“: wenn es eine ist, beide gleich schreiben</translation>
    </message>
    <message>
        <source>a &apos;%1&apos; is asked for, and the club has none: each check will miss it</source>
        <translation>„%1“ wird verlangt, und der Verein hat keines: Es wird bei jeder Prüfung fehlen</translation>
    </message>
    <message>
        <source>the rule &apos;%1&apos; of &apos;%2&apos; has no source: write who says so, such as the maker&apos;s manual</source>
        <translation>die Regel „%1“ von „%2“ nennt keine Quelle: schreiben, wer das sagt, etwa das Handbuch des Herstellers</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not marked as worn: no check will ask whether it fits</source>
        <translation>„%1“ ist nicht als getragen gekennzeichnet: Keine Prüfung fragt, ob es passt</translation>
    </message>
    <message>
        <source>this check was closed unsigned</source>
        <translation>diese Prüfung wurde ohne Unterschrift geschlossen</translation>
    </message>
    <message>
        <source>nothing stands in this check that could be taken back</source>
        <translation>in dieser Prüfung steht nichts, was zurückgenommen werden könnte</translation>
    </message>
    <message>
        <source>%1 has no unfinished check of that phase</source>
        <translation>%1 hat keine offene Prüfung dieser Art</translation>
    </message>
    <message>
        <source>only a written-off item is reinstated</source>
        <translation>nur Ausgesondertes kommt wieder in Gebrauch</translation>
    </message>
    <message>
        <source>this is a club file, or part of one: nothing is written over it</source>
        <translation>das ist eine Vereinsdatei oder ein Teil davon: darüber wird nichts geschrieben</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>this is a folder or a device: nothing is written over it</source>
        <translation>das ist ein Ordner oder ein Gerät: darüber wird nichts geschrieben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is before 1970 or still to come</source>
        <translation>„%1“ liegt vor 1970 oder steht noch bevor</translation>
    </message>
    <message>
        <source>say when it happened</source>
        <translation>angeben, wann es geschah</translation>
    </message>
    <message>
        <source>the club file was moved, deleted or replaced while it was open; this was not recorded</source>
        <translation>die Vereinsdatei wurde verschoben, gelöscht oder ersetzt, während sie offen war; dies wurde nicht eingetragen</translation>
    </message>
    <message>
        <source>what was recorded before is in the file that was moved: open the one that is to be used</source>
        <translation>was vorher eingetragen wurde, steht in der verschobenen Datei: die öffnen, mit der gearbeitet werden soll</translation>
    </message>
    <message>
        <source>the club file has format %1, which only unreleased programs wrote</source>
        <translation>Die Vereinsdatei hat Format %1, das nur unveröffentlichte Programme geschrieben haben</translation>
    </message>
    <message>
        <source>export it with the program that wrote it, and import that here</source>
        <translation>mit dem Programm, das sie geschrieben hat, exportieren und das Ergebnis hier importieren</translation>
    </message>
    <message>
        <source>the club file was altered by another program: %1; nothing is written to it</source>
        <translation>Die Vereinsdatei wurde von einem anderen Programm verändert: %1; in sie wird nichts geschrieben</translation>
    </message>
    <message>
        <source>it is not signed by that machine</source>
        <translation>trägt nicht die Signatur dieses Geräts</translation>
    </message>
    <message>
        <source>its chain does not begin with the key that its facts are signed with</source>
        <translation>seine Kette beginnt nicht mit dem Schlüssel, mit dem seine Einträge signiert sind</translation>
    </message>
    <message>
        <source>machine %2</source>
        <translation>Gerät %2</translation>
    </message>
    <message>
        <source>%3 is not what was written</source>
        <translation>%3 ist nicht, was geschrieben wurde</translation>
    </message>
    <message>
        <source>%3 is not there, and was not erased</source>
        <translation>%3 fehlt und wurde nicht gelöscht</translation>
    </message>
    <message>
        <source>no fact tells of it</source>
        <translation>keine Zeile spricht davon</translation>
    </message>
    <message>
        <source>private cell %1</source>
        <translation>private Zelle %1</translation>
    </message>
    <message>
        <source>it is not as this program makes it</source>
        <translation>ist nicht so, wie dieses Programm es anlegt</translation>
    </message>
    <message>
        <source>schema, %1</source>
        <translation>Schema, %1</translation>
    </message>
    <message>
        <source>the club file says that it has format %1, which no Tholepin writes</source>
        <translation>die Vereinsdatei gibt Format %1 an, das kein Tholepin schreibt</translation>
    </message>
    <message>
        <source>restore the newest backup; the file was not touched</source>
        <translation>die neueste Sicherung zurückholen; die Datei wurde nicht angerührt</translation>
    </message>
    <message>
        <source>a write to the club file was cut short, and cannot be put right from here</source>
        <translation>beim Schreiben der Vereinsdatei wurde abgebrochen, und von hier aus lässt sich das nicht zu Ende bringen</translation>
    </message>
    <message>
        <source>open the club file where it can be written, with the files that stand beside it</source>
        <translation>die Vereinsdatei dort öffnen, wo sie geschrieben werden kann, mit den Dateien, die neben ihr stehen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; holds a character that is not seen, such as a control character, a line break or a change of the writing direction: take it out</source>
        <translation>in „%1“ ist ein Zeichen, das man nicht sieht, etwa ein Steuerzeichen, ein Zeilenumbruch oder ein Wechsel der Schreibrichtung: herausnehmen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not UTF-8: give it as UTF-8</source>
        <translation>„%1“ ist nicht UTF-8: als UTF-8 angeben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is too long: write at most %2 characters</source>
        <translation>„%1“ ist zu lang: höchstens %2 Zeichen schreiben</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>der Arbeitsspeicher reicht nicht</translation>
    </message>
    <message>
        <source>close other programs, or ask for less at once</source>
        <translation>andere Programme schließen oder weniger auf einmal verlangen</translation>
    </message>
    <message>
        <source>the tags are recorded, but their sheet could not be made: %2</source>
        <translation>die Etiketten sind eingetragen, aber ihr Blatt konnte nicht gemacht werden: %2</translation>
    </message>
    <message>
        <source>the record stands, so do not record them again: &apos;tholepinctl tags %1 --items … --out …&apos; makes the sheet</source>
        <translation>der Eintrag gilt, also nicht noch einmal eintragen: „tholepinctl tags %1 --items … --out …“ macht das Blatt</translation>
    </message>
    <message>
        <source>the picture is larger than 64 million pixels, or takes too much memory or time to read</source>
        <translation>das Bild hat mehr als 64 Millionen Bildpunkte oder braucht zu viel Speicher oder Zeit</translation>
    </message>
    <message>
        <source>no %1 of this club is called &apos;%2&apos;</source>
        <translation>dieser Verein hat nichts dieser Art (%1) mit dem Namen „%2“</translation>
    </message>
    <message>
        <source>give the name as the register has it</source>
        <translation>den Namen so angeben, wie er im Verzeichnis steht</translation>
    </message>
    <message>
        <source>the new name is empty</source>
        <translation>der neue Name ist leer</translation>
    </message>
    <message>
        <source>say how it is to be called</source>
        <translation>angeben, wie es heißen soll</translation>
    </message>
    <message>
        <source>another one is called &apos;%1&apos;</source>
        <translation>etwas anderes heißt schon „%1“</translation>
    </message>
    <message>
        <source>take a name that nothing else has</source>
        <translation>einen Namen nehmen, den nichts anderes hat</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is an old name of &apos;%2&apos;</source>
        <translation>„%1“ ist ein früherer Name von „%2“</translation>
    </message>
    <message>
        <source>take the name of now, or one that nothing had</source>
        <translation>den heutigen Namen nehmen oder einen, den nichts hatte</translation>
    </message>
    <message>
        <source>the club file has more than one name (hard links), and is only read so</source>
        <translation>die Vereinsdatei hat mehr als einen Namen (harte Links) und wird so nur gelesen</translation>
    </message>
    <message>
        <source>remove the other names, or copy the file with `backup`</source>
        <translation>die anderen Namen entfernen oder die Datei mit „backup“ kopieren</translation>
    </message>
    <message>
        <source>what was asked is recorded, but the answer could not be written</source>
        <translation>was verlangt war, ist eingetragen, aber die Antwort konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>do not give the command again: `history`, `tags` and `log` show what was recorded</source>
        <translation>den Befehl nicht noch einmal geben: „history“, „tags“ und „log“ zeigen, was eingetragen wurde</translation>
    </message>
    <message>
        <source>erased, but another program that reads the club file still holds what was there</source>
        <translation>gelöscht, aber ein anderes Programm, das die Vereinsdatei liest, hält noch fest, was dort stand</translation>
    </message>
    <message>
        <source>close the other program, and give the command again</source>
        <translation>das andere Programm schließen und den Befehl noch einmal geben</translation>
    </message>
    <message>
        <source>%3 is nothing that a program writes</source>
        <translation>%3 ist nichts, was ein Programm schreibt</translation>
    </message>
    <message>
        <source>what it went on from is not there: facts were cut off</source>
        <translation>woran es anschließt, ist nicht da: Zeilen wurden abgeschnitten</translation>
    </message>
    <message>
        <source>give the path of a spreadsheet</source>
        <translation>den Pfad einer Tabelle angeben</translation>
    </message>
    <message>
        <source>this spreadsheet cannot be read, it may be damaged</source>
        <translation>diese Tabelle lässt sich nicht lesen, vielleicht ist sie beschädigt</translation>
    </message>
    <message>
        <source>open it in your spreadsheet program, save it as CSV (UTF-8) and import that</source>
        <translation>im Tabellenprogramm öffnen, als CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>this is not a spreadsheet that can be read</source>
        <translation>das ist keine Tabelle, die sich lesen lässt</translation>
    </message>
    <message>
        <source>save it as .xlsx, .ods or CSV (UTF-8) and import that</source>
        <translation>als .xlsx, .ods oder CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>this is a workbook of the old kind, .xls</source>
        <translation>das ist eine Arbeitsmappe der alten Art, .xls</translation>
    </message>
    <message>
        <source>open it in your spreadsheet program, save it as .xlsx or CSV (UTF-8) and import that</source>
        <translation>im Tabellenprogramm öffnen, als .xlsx oder CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>this spreadsheet is protected by a password</source>
        <translation>diese Tabelle ist durch ein Kennwort geschützt</translation>
    </message>
    <message>
        <source>open it in your spreadsheet program, save it without a password or as CSV (UTF-8) and import that</source>
        <translation>im Tabellenprogramm öffnen, ohne Kennwort oder als CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>nothing stands in the cells of this spreadsheet</source>
        <translation>in den Zellen dieser Tabelle steht nichts</translation>
    </message>
    <message>
        <source>if you see something there in your spreadsheet program, save it as CSV (UTF-8) and import that</source>
        <translation>wenn im Tabellenprogramm dort etwas zu sehen ist, als CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>this spreadsheet is larger than %1 MB</source>
        <translation>diese Tabelle ist größer als %1 MB</translation>
    </message>
    <message>
        <source>save the one sheet that is meant as CSV (UTF-8) and import that</source>
        <translation>nur das gemeinte Blatt als CSV (UTF-8) speichern und das einlesen</translation>
    </message>
    <message>
        <source>more stands in this spreadsheet than can be read: at most %1 cells</source>
        <translation>in dieser Tabelle steht mehr, als sich lesen lässt: höchstens %1 Zellen</translation>
    </message>
    <message>
        <source>the sheet &apos;%1&apos; has more than %2 rows</source>
        <translation>das Blatt „%1“ hat mehr als %2 Zeilen</translation>
    </message>
    <message>
        <source>delete what stands below the list, or split the list</source>
        <translation>löschen, was unter der Liste steht, oder die Liste teilen</translation>
    </message>
    <message>
        <source>the sheet &apos;%1&apos; has more than %2 columns</source>
        <translation>das Blatt „%1“ hat mehr als %2 Spalten</translation>
    </message>
    <message>
        <source>delete what stands beside the list</source>
        <translation>löschen, was neben der Liste steht</translation>
    </message>
    <message>
        <source>there is no sheet &apos;%1&apos; in this spreadsheet</source>
        <translation>in dieser Tabelle gibt es kein Blatt „%1“</translation>
    </message>
    <message>
        <source>its sheets are: %2</source>
        <translation>die Blätter sind: %2</translation>
    </message>
    <message>
        <source>no row of the sheet &apos;%1&apos; has headings that are known</source>
        <translation>keine Zeile des Blatts „%1“ hat Überschriften, die bekannt sind</translation>
    </message>
    <message>
        <source>say what a column means, as &quot;Heading=column&quot;; the columns are %2</source>
        <translation>sagen, was eine Spalte bedeutet, als „Überschrift=Spalte“; die Spalten sind %2</translation>
    </message>
    <message>
        <source>no column of the sheet is known as the %1</source>
        <translation>keine Spalte des Blatts ist als %1 bekannt</translation>
    </message>
    <message>
        <source>say which it is, as &quot;Heading=%1&quot;; the headings are %2</source>
        <translation>sagen, welche es ist, als „Überschrift=%1“; die Überschriften sind %2</translation>
    </message>
    <message>
        <source>the sheet has no heading &apos;%1&apos;</source>
        <translation>das Blatt hat keine Überschrift „%1“</translation>
    </message>
    <message>
        <source>its headings are %2</source>
        <translation>die Überschriften sind %2</translation>
    </message>
    <message>
        <source>there is no column &apos;%1&apos;</source>
        <translation>es gibt keine Spalte „%1“</translation>
    </message>
    <message>
        <source>the columns are %2</source>
        <translation>die Spalten sind %2</translation>
    </message>
    <message>
        <source>two columns of the sheet are the %1: &apos;%2&apos; and &apos;%3&apos;</source>
        <translation>zwei Spalten des Blatts sind %1: „%2“ und „%3“</translation>
    </message>
    <message>
        <source>leave one out, as &quot;%3=&quot;</source>
        <translation>eine weglassen, als „%3=“</translation>
    </message>
    <message>
        <source>&apos;%1&apos; does not say what columns mean</source>
        <translation>„%1“ sagt nicht, was Spalten bedeuten</translation>
    </message>
    <message>
        <source>write &quot;Heading=column&quot;, several with commas between them</source>
        <translation>„Überschrift=Spalte“ schreiben, mehrere mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; cannot be made on the way</source>
        <translation>„%1“ lässt sich nicht dabei anlegen</translation>
    </message>
    <message>
        <source>kit_types, sizes, places and people can</source>
        <translation>möglich sind kit_types, sizes, places und people</translation>
    </message>
    <message>
        <source>&apos;%1&apos; may be two days: day first or month first</source>
        <translation>„%1“ kann zwei Tage meinen: Tag zuerst oder Monat zuerst</translation>
    </message>
    <message>
        <source>say which, with --days dmy or --days mdy</source>
        <translation>sagen, welchen, mit --days dmy oder --days mdy</translation>
    </message>
    <message>
        <source>the formula of this cell went wrong: %1</source>
        <translation>die Formel dieser Zelle ging schief: %1</translation>
    </message>
    <message>
        <source>mend the formula, or write the value in its place</source>
        <translation>die Formel berichtigen oder den Wert an ihre Stelle schreiben</translation>
    </message>
    <message>
        <source>this cell holds a formula, and its value was not saved with it</source>
        <translation>in dieser Zelle steht eine Formel, deren Wert nicht mitgespeichert wurde</translation>
    </message>
    <message>
        <source>open the file in your spreadsheet program and save it again</source>
        <translation>die Datei im Tabellenprogramm öffnen und neu speichern</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no number of things</source>
        <translation>„%1“ ist keine Anzahl</translation>
    </message>
    <message>
        <source>write a whole number from 0 to %2</source>
        <translation>eine ganze Zahl von 0 bis %2 schreiben</translation>
    </message>
    <message>
        <source>%1 things cannot have the same tag or serial</source>
        <translation>%1 Teile können nicht dasselbe Etikett oder dieselbe Seriennummer haben</translation>
    </message>
    <message>
        <source>write one row for each</source>
        <translation>für jedes eine eigene Zeile schreiben</translation>
    </message>
    <message>
        <source>the serial %1 of this kit type stands in row %2 already</source>
        <translation>die Seriennummer %1 dieser Art steht schon in Zeile %2</translation>
    </message>
    <message>
        <source>correct one of them, or take one row out</source>
        <translation>eine davon berichtigen oder eine Zeile herausnehmen</translation>
    </message>
    <message>
        <source>the club has no %1 &apos;%2&apos;</source>
        <translation>im Verein gibt es „%2“ nicht (%1)</translation>
    </message>
    <message>
        <source>correct it, or let it be made on the way (--make %3)</source>
        <translation>berichtigen oder dabei anlegen lassen (--make %3)</translation>
    </message>
    <message>
        <source>correct it, or register it first</source>
        <translation>berichtigen oder zuerst ins Verzeichnis aufnehmen</translation>
    </message>
    <message>
        <source>the club has no boat and no place &apos;%1&apos;</source>
        <translation>im Verein gibt es weder ein Boot noch einen Ort „%1“</translation>
    </message>
    <message>
        <source>correct it, register the boat first, or let the place be made on the way (--make places)</source>
        <translation>berichtigen, das Boot zuerst aufnehmen oder den Ort dabei anlegen lassen (--make places)</translation>
    </message>
    <message>
        <source>the quantities of the sheet make more than %1 things</source>
        <translation>die Anzahlen des Blatts ergeben mehr als %1 Teile</translation>
    </message>
    <message>
        <source>correct the quantities, or split the list</source>
        <translation>die Anzahlen berichtigen oder die Liste teilen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no tag code of a place: write one that begins with S</source>
        <translation>„%1“ ist kein Code eines Ortes: einen schreiben, der mit S beginnt</translation>
    </message>
    <message>
        <source>no item, boat, person or place of this club has the tag %1</source>
        <translation>kein Stück, kein Boot, keine Person und kein Ort dieses Vereins hat den Code %1</translation>
    </message>
    <message>
        <source>nothing of this club has the tag or the name &apos;%1&apos;</source>
        <translation>nichts in diesem Verein hat den Code oder den Namen „%1“</translation>
    </message>
    <message>
        <source>give a tag code, or the name of a boat, person or place as the register has it</source>
        <translation>einen Code angeben, oder den Namen eines Bootes, einer Person oder eines Ortes, wie er im Verzeichnis steht</translation>
    </message>
    <message>
        <source>more than one thing is called &apos;%1&apos;</source>
        <translation>mehr als eines heißt „%1“</translation>
    </message>
    <message>
        <source>say by its tag which one is meant: %2</source>
        <translation>mit dem Code sagen, welches gemeint ist: %2</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no longer here: the last day was %2</source>
        <translation>„%1“ ist nicht mehr hier: der letzte Tag war %2</translation>
    </message>
    <message>
        <source>take another, or take the last day out of the register</source>
        <translation>etwas anderes wählen, oder den letzten Tag aus dem Verzeichnis nehmen</translation>
    </message>
    <message>
        <source>kit that is not written off still belongs to &apos;%1&apos;: %2, such as %3</source>
        <translation>Ausrüstung, die nicht ausgesondert ist, gehört noch zu „%1“: %2, etwa %3</translation>
    </message>
    <message>
        <source>move it first, to another boat, place or person</source>
        <translation>sie zuerst einem anderen Boot, einem anderen Ort oder einer anderen Person geben</translation>
    </message>
    <message>
        <source>it needs no tag: it counts nowhere any more</source>
        <translation>es braucht kein Etikett: es zählt nirgends mehr</translation>
    </message>
    <message>
        <source>the last day of &apos;%1&apos; is %2, and kit that is not written off belongs there: %3. Move it to another boat, place or person</source>
        <translation>der letzte Tag von „%1“ ist %2, und Ausrüstung, die nicht ausgesondert ist, gehört noch dazu: %3. Sie einem anderen Boot, einem anderen Ort oder einer anderen Person geben</translation>
    </message>
    <message>
        <source>there is no &apos;%2&apos; in %1</source>
        <translation>in %1 gibt es kein „%2“</translation>
    </message>
    <message>
        <source>give the row&apos;s name as the register has it</source>
        <translation>den Namen so angeben, wie er im Verzeichnis steht</translation>
    </message>
    <message>
        <source>it may be %3</source>
        <translation>gemeint sein kann %3</translation>
    </message>
    <message>
        <source>&apos;%1&apos; may be more than one row</source>
        <translation>„%1“ kann mehr als eine Zeile sein</translation>
    </message>
    <message>
        <source>say which: %2</source>
        <translation>sagen, welche: %2</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is there already</source>
        <translation>„%1“ gibt es schon</translation>
    </message>
    <message>
        <source>change it, or give the new one another name</source>
        <translation>es ändern oder dem neuen einen anderen Namen geben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was changed meanwhile</source>
        <translation>„%1“ wurde inzwischen geändert</translation>
    </message>
    <message>
        <source>%1 is what &apos;%2&apos; is known by, and cannot be changed like a cell</source>
        <translation>an %1 wird „%2“ erkannt; das lässt sich nicht wie eine Zelle ändern</translation>
    </message>
    <message>
        <source>rename it, or write a new row</source>
        <translation>es umbenennen oder eine neue Zeile schreiben</translation>
    </message>
    <message>
        <source>serial %1 stands twice in what is to be registered</source>
        <translation>die Seriennummer %1 steht zweimal in dem, was aufgenommen werden soll</translation>
    </message>
    <message>
        <source>correct one of them, or take it out</source>
        <translation>eine davon berichtigen oder herausnehmen</translation>
    </message>
    <message>
        <source>%1 serials were given for %2 things of the kit type %3</source>
        <translation>%1 Seriennummern für %2 Stück der Art %3 angegeben</translation>
    </message>
    <message>
        <source>give one serial for each thing, or less</source>
        <translation>eine Seriennummer für jedes Stück angeben, oder weniger</translation>
    </message>
    <message>
        <source>no event holds now</source>
        <translation>gerade läuft keine Veranstaltung</translation>
    </message>
    <message>
        <source>begin one by its name first</source>
        <translation>zuerst eine mit ihrem Namen beginnen</translation>
    </message>
    <message>
        <source>an event that begins at %2 cannot be over at %1</source>
        <translation>eine Veranstaltung, die um %2 beginnt, kann nicht um %1 zu Ende sein</translation>
    </message>
    <message>
        <source>give an instant that is still to come</source>
        <translation>einen Zeitpunkt angeben, der noch kommt</translation>
    </message>
    <message>
        <source>the photograph is no JPEG</source>
        <translation>das Foto ist kein JPEG</translation>
    </message>
    <message>
        <source>take it again</source>
        <translation>neu aufnehmen</translation>
    </message>
    <message>
        <source>the photograph has %1 kB and may have %2</source>
        <translation>das Foto hat %1 kB und darf %2 haben</translation>
    </message>
    <message>
        <source>make it smaller</source>
        <translation>verkleinern</translation>
    </message>
    <message>
        <source>there is no photograph %1</source>
        <translation>das Foto %1 gibt es nicht</translation>
    </message>
    <message>
        <source>give the hash that `history` shows</source>
        <translation>den Hash angeben, den „history“ zeigt</translation>
    </message>
    <message>
        <source>its photograph is not the one that was recorded</source>
        <translation>das Foto ist nicht das eingetragene</translation>
    </message>
    <message>
        <source>its photograph is not there</source>
        <translation>das Foto fehlt</translation>
    </message>
    <message>
        <source>photograph %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>write a rule of kind after_event for it first</source>
        <translation>zuerst eine Regel der Art after_event dafür schreiben</translation>
    </message>
    <message>
        <source>its rules wait for: %3</source>
        <translation>die Regeln warten auf: %3</translation>
    </message>
    <message>
        <source>give the day on which it happened</source>
        <translation>den Tag angeben, an dem es geschah</translation>
    </message>
    <message>
        <source>%3 has no record of &apos;%1&apos; on %2</source>
        <translation>%3 hat keinen Nachweis „%1“ vom %2</translation>
    </message>
    <message>
        <source>give rule, part and day as its history has them</source>
        <translation>Regel, Teil und Tag so angeben, wie der Verlauf sie hat</translation>
    </message>
    <message>
        <source>the %2 of %4 has no record of &apos;%1&apos; on %3</source>
        <translation>%2 von %4 hat keinen Nachweis „%1“ vom %3</translation>
    </message>
    <message>
        <source>the record of &apos;%1&apos; on %2 is withdrawn already</source>
        <translation>der Nachweis „%1“ vom %2 ist schon zurückgenommen</translation>
    </message>
    <message>
        <source>the codes cannot be read further; what came before is recorded</source>
        <translation>die Codes lassen sich nicht weiter lesen; was vorher kam, ist aufgezeichnet</translation>
    </message>
    <message>
        <source>go on with the codes that are left</source>
        <translation>mit den übrigen Codes weitermachen</translation>
    </message>
    <message>
        <source>the file was made, but the answer could not be written</source>
        <translation>die Datei ist angelegt, aber die Antwort ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>do not give the command again: `verify` tells what is in the file</source>
        <translation>den Befehl nicht noch einmal geben: `verify` sagt, was in der Datei steht</translation>
    </message>
    <message>
        <source>this file is of another club</source>
        <translation>diese Datei gehört einem anderen Verein</translation>
    </message>
    <message>
        <source>choose a file that was begun as a copy of this one</source>
        <translation>eine Datei wählen, die als Kopie dieser begonnen wurde</translation>
    </message>
    <message>
        <source>the record of this file is damaged, so nothing of it was taken in: %1</source>
        <translation>die Aufzeichnung dieser Datei ist beschädigt, darum wurde nichts daraus übernommen: %1</translation>
    </message>
    <message>
        <source>look at it with `verify`, and take an undamaged copy</source>
        <translation>mit `verify` ansehen und eine unbeschädigte Kopie nehmen</translation>
    </message>
    <message>
        <source>machine %1 wrote two different records from its fact %2 on (%3 here, %4 there), which no program does by itself: one may have been rewritten</source>
        <translation>das Gerät %1 hat von seiner Zeile %2 an zwei verschiedene Aufzeichnungen geschrieben (%3 hier, %4 dort), was kein Programm von selbst tut: eine kann umgeschrieben worden sein</translation>
    </message>
    <message>
        <source>keep the file that you trust, or take the other record in as that of a machine of its own: --as-new-machine</source>
        <translation>die Datei behalten, der man traut, oder die andere Aufzeichnung als die eines eigenen Geräts übernehmen: --as-new-machine</translation>
    </message>
    <message>
        <source>this file has taken in, as that of another machine, what was recorded here</source>
        <translation>diese Datei hat als Einträge eines anderen Geräts schon übernommen, was hier aufgezeichnet ist</translation>
    </message>
    <message>
        <source>it holds all of both: go on with a copy of it, and put the one that you merge into away</source>
        <translation>sie enthält alles aus beiden: mit einer Kopie von ihr weiterarbeiten und die andere weglegen</translation>
    </message>
    <message>
        <source>%1 and %2 are two things, and both are called %3 on one machine or the other: merged, they would be one for good</source>
        <translation>%1 und %2 sind zweierlei, und beide heißen auf dem einen oder anderen Gerät %3: zusammengeführt wären sie für immer eins</translation>
    </message>
    <message>
        <source>the new row of %1 holds nothing</source>
        <translation>die neue Zeile in %1 ist leer</translation>
    </message>
    <message>
        <source>give at least what it is known by</source>
        <translation>mindestens angeben, wie sie heißt</translation>
    </message>
    <message>
        <source>the hub&apos;s URL is none that PostgreSQL knows</source>
        <translation>die Adresse des Bezirksservers ist keine, die PostgreSQL kennt</translation>
    </message>
    <message>
        <source>write it like postgresql://club@db.example.org/tholepin (PostgreSQL, Connection URIs)</source>
        <translation>so schreiben: postgresql://verein@db.example.org/tholepin (PostgreSQL, Connection URIs)</translation>
    </message>
    <message>
        <source>the hub&apos;s URL holds a password, which would stand in the list of programs and be kept</source>
        <translation>die Adresse des Bezirksservers enthält ein Passwort, das in der Liste der Programme stünde und aufbewahrt würde</translation>
    </message>
    <message>
        <source>put the password into ~/.pgpass (a line host:port:database:user:password, mode 0600), and take it out of the URL</source>
        <translation>das Passwort in ~/.pgpass eintragen (eine Zeile host:port:database:user:password, Rechte 0600) und aus der Adresse herausnehmen</translation>
    </message>
    <message>
        <source>the hub was not reached, so nothing was taken in: %1</source>
        <translation>der Bezirksserver wurde nicht erreicht, darum wurde nichts übernommen: %1</translation>
    </message>
    <message>
        <source>work goes on without it; look whether this computer is online, whether the URL is right, and whether ~/.pgpass has the password</source>
        <translation>die Arbeit geht ohne ihn weiter; nachsehen, ob dieser Rechner online ist, ob die Adresse stimmt und ob ~/.pgpass das Passwort enthält</translation>
    </message>
    <message>
        <source>this database is no hub, or one of an older program</source>
        <translation>diese Datenbank ist kein Bezirksserver, oder einer eines älteren Programms</translation>
    </message>
    <message>
        <source>whoever administers it gives `tholepinctl hub prepare URL`</source>
        <translation>wer sie verwaltet, ruft `tholepinctl hub prepare URL` auf</translation>
    </message>
    <message>
        <source>the hub does not allow that to the role of the URL: %1</source>
        <translation>der Bezirksserver erlaubt das der Rolle aus der Adresse nicht: %1</translation>
    </message>
    <message>
        <source>use the URL with the role that may: the club&apos;s for a club, the district&apos;s for `hub boats`, the administrator&apos;s for `hub prepare` and `hub add`</source>
        <translation>die Adresse mit der Rolle nehmen, die es darf: die des Vereins für einen Verein, die des Bezirks für `hub boats`, die der Verwaltung für `hub prepare` und `hub add`</translation>
    </message>
    <message>
        <source>the hub could not do that: %1</source>
        <translation>der Bezirksserver konnte das nicht tun: %1</translation>
    </message>
    <message>
        <source>tell whoever administers the database</source>
        <translation>der Verwaltung der Datenbank Bescheid geben</translation>
    </message>
    <message>
        <source>another machine sent something at the same moment</source>
        <translation>ein anderes Gerät hat im selben Augenblick etwas gesendet</translation>
    </message>
    <message>
        <source>exchange again</source>
        <translation>noch einmal austauschen</translation>
    </message>
    <message>
        <source>this file exchanges with no hub</source>
        <translation>diese Datei tauscht mit keinem Bezirksserver aus</translation>
    </message>
    <message>
        <source>give `tholepinctl hub join FILE URL` first</source>
        <translation>zuerst `tholepinctl hub join FILE URL` aufrufen</translation>
    </message>
    <message>
        <source>where the file exchanges cannot be kept in this user&apos;s state folder</source>
        <translation>wo die Datei austauscht, lässt sich im Zustandsordner dieses Benutzers nicht aufbewahren</translation>
    </message>
    <message>
        <source>the folder must be the user&apos;s own (mode 0700), and THOLEPIN_STATE, XDG_STATE_HOME or HOME must say where it is</source>
        <translation>der Ordner muss dem Benutzer allein gehören (Rechte 0700), und THOLEPIN_STATE, XDG_STATE_HOME oder HOME muss sagen, wo er ist</translation>
    </message>
    <message>
        <source>no club of the hub connects as &apos;%1&apos;</source>
        <translation>kein Verein des Bezirksservers verbindet sich als &apos;%1&apos;</translation>
    </message>
    <message>
        <source>whoever administers the database gives `tholepinctl hub add URL --club NAME --role ROLE`</source>
        <translation>wer die Datenbank verwaltet, ruft `tholepinctl hub add URL --club NAME --role ROLE` auf</translation>
    </message>
    <message>
        <source>the database has no role &apos;%1&apos;</source>
        <translation>die Datenbank hat keine Rolle &apos;%1&apos;</translation>
    </message>
    <message>
        <source>make it first, on the server: createuser --pwprompt ROLE</source>
        <translation>sie zuerst auf dem Server anlegen: createuser --pwprompt ROLE</translation>
    </message>
    <message>
        <source>role &apos;%1&apos; connects for another club, %2</source>
        <translation>die Rolle &apos;%1&apos; verbindet sich für einen anderen Verein, %2</translation>
    </message>
    <message>
        <source>make a role of its own for each club</source>
        <translation>für jeden Verein eine eigene Rolle anlegen</translation>
    </message>
    <message>
        <source>role &apos;%1&apos; reads all clubs for the district</source>
        <translation>die Rolle &apos;%1&apos; liest für den Bezirk alle Vereine</translation>
    </message>
    <message>
        <source>the hub has no club &apos;%1&apos; that this role may read; it has: %2</source>
        <translation>der Bezirksserver hat keinen Verein &apos;%1&apos;, den diese Rolle lesen darf; er hat: %2</translation>
    </message>
    <message>
        <source>give the name as it stands there, and the URL with that club&apos;s role</source>
        <translation>den Namen angeben, wie er dort steht, und die Adresse mit der Rolle dieses Vereins</translation>
    </message>
    <message>
        <source>the hub has nothing of club &apos;%1&apos; yet</source>
        <translation>der Bezirksserver hat noch nichts vom Verein &apos;%1&apos;</translation>
    </message>
    <message>
        <source>exchange the club&apos;s file first: `tholepinctl hub join FILE URL`, `tholepinctl hub exchange FILE`</source>
        <translation>zuerst die Datei des Vereins austauschen: `tholepinctl hub join FILE URL`, `tholepinctl hub exchange FILE`</translation>
    </message>
    <message>
        <source>the hub has another club&apos;s record for this role: that of %1</source>
        <translation>der Bezirksserver hat für diese Rolle die Aufzeichnung eines anderen Vereins: die von %1</translation>
    </message>
    <message>
        <source>use the URL with this club&apos;s own role</source>
        <translation>die Adresse mit der eigenen Rolle dieses Vereins nehmen</translation>
    </message>
    <message>
        <source>this role of the hub is for club %1, and the file is of %2</source>
        <translation>diese Rolle des Bezirksservers ist für den Verein %1, und die Datei ist von %2</translation>
    </message>
    <message>
        <source>use this club&apos;s own role, or have the club added to the hub by the name that the file has</source>
        <translation>die eigene Rolle dieses Vereins nehmen, oder den Verein unter dem Namen eintragen lassen, den die Datei hat</translation>
    </message>
    <message>
        <source>machine %1 wrote two different records from its fact %2 on (%3 here, %4 on the hub), which no program does by itself: one may have been rewritten</source>
        <translation>Gerät %1 hat ab seiner Zeile %2 zwei verschiedene Aufzeichnungen geschrieben (%3 hier, %4 auf dem Bezirksserver), was kein Programm von selbst tut: eine wurde vielleicht umgeschrieben</translation>
    </message>
    <message>
        <source>nothing was exchanged; `tholepinctl hub fetch` the hub&apos;s record into another file, and merge this one into that with --as-new-machine, or put this one away</source>
        <translation>nichts wurde ausgetauscht; mit `tholepinctl hub fetch` die Aufzeichnung des Bezirksservers in eine andere Datei holen und diese hier mit --as-new-machine dort zusammenführen, oder diese weglegen</translation>
    </message>
    <message>
        <source>fact %1 of machine %2 does not follow from the one before it, so the hub refused it</source>
        <translation>Zeile %1 von Gerät %2 folgt nicht aus der davor, darum hat der Bezirksserver sie abgelehnt</translation>
    </message>
    <message>
        <source>look this file over with `verify`, and restore a backup</source>
        <translation>diese Datei mit `verify` prüfen und eine Sicherung zurückholen</translation>
    </message>
    <message>
        <source>the record on the hub is damaged, so nothing of it was taken in: %1</source>
        <translation>die Aufzeichnung auf dem Bezirksserver ist beschädigt, darum wurde nichts davon übernommen: %1</translation>
    </message>
    <message>
        <source>tell whoever administers the database which machine and fact it is</source>
        <translation>der Verwaltung der Datenbank sagen, um welches Gerät und welche Zeile es geht</translation>
    </message>
    <message>
        <source>this is a gear officer&apos;s to do, and needs the PIN of %1</source>
        <translation>das ist Sache des Gerätewarts und braucht die PIN von %1</translation>
    </message>
    <message>
        <source>give the PIN in the page, or on the command line with --by and --pin-file</source>
        <translation>die PIN auf der Seite eingeben, oder auf der Befehlszeile mit --by und --pin-file</translation>
    </message>
    <message>
        <source>this is not the PIN of %1</source>
        <translation>das ist nicht die PIN von %1</translation>
    </message>
    <message>
        <source>give it again; after five wrong ones there is a wait</source>
        <translation>noch einmal eingeben; nach fünf falschen muss gewartet werden</translation>
    </message>
    <message>
        <source>after several wrong PINs for %2 the next one has to wait for %1 seconds</source>
        <translation>nach mehreren falschen PINs für %2 muss die nächste %1 Sekunden warten</translation>
    </message>
    <message>
        <source>give it then</source>
        <translation>dann noch einmal eingeben</translation>
    </message>
    <message>
        <source>a PIN has 4 to 12 characters</source>
        <translation>eine PIN hat 4 bis 12 Zeichen</translation>
    </message>
    <message>
        <source>choose digits, letters or both, without blanks at the ends</source>
        <translation>Ziffern, Buchstaben oder beides wählen, ohne Leerzeichen an den Enden</translation>
    </message>
    <message>
        <source>the PIN holds a character that cannot be seen</source>
        <translation>die PIN enthält ein Zeichen, das man nicht sieht</translation>
    </message>
    <message>
        <source>type it anew</source>
        <translation>neu eintippen</translation>
    </message>
    <message>
        <source>%1 has no PIN</source>
        <translation>%1 hat keine PIN</translation>
    </message>
    <message>
        <source>name somebody who has one, or set one first</source>
        <translation>jemanden nennen, der eine hat, oder erst eine setzen</translation>
    </message>
    <message>
        <source>what this file keeps of the PIN of %1 was changed since it was set</source>
        <translation>was diese Datei von der PIN von %1 aufbewahrt, wurde verändert, seit sie gesetzt wurde</translation>
    </message>
    <message>
        <source>have another gear officer set a new one, and look at the file with `verify`</source>
        <translation>einen anderen Gerätewart eine neue setzen lassen und die Datei mit „verify“ ansehen</translation>
    </message>
    <message>
        <source>%1 is not a gear officer here today</source>
        <translation>%1 ist hier heute kein Gerätewart</translation>
    </message>
    <message>
        <source>give the PIN of a gear officer</source>
        <translation>die PIN eines Gerätewarts eingeben</translation>
    </message>
    <message>
        <source>%1 has a PIN already</source>
        <translation>%1 hat schon eine PIN</translation>
    </message>
    <message>
        <source>give that one, too; when it is lost: `tholepinctl pin reset`</source>
        <translation>auch diese angeben; ist sie verloren: „tholepinctl pin reset“</translation>
    </message>
    <message>
        <source>%1 has a PIN and can set a new one for %2</source>
        <translation>%1 hat eine PIN und kann für %2 eine neue setzen</translation>
    </message>
    <message>
        <source>ask that gear officer</source>
        <translation>diesen Gerätewart fragen</translation>
    </message>
    <message>
        <source>the file is another user&apos;s of this computer</source>
        <translation>die Datei gehört einem anderen Benutzer dieses Rechners</translation>
    </message>
    <message>
        <source>have the owner of the file do it</source>
        <translation>den Eigentümer der Datei darum bitten</translation>
    </message>
    <message>
        <source>this club asks for the PIN of whoever signs, and %1 has one</source>
        <translation>dieser Verein verlangt beim Unterschreiben die eigene PIN, und %1 hat eine</translation>
    </message>
    <message>
        <source>give it, or have somebody sign who has none</source>
        <translation>sie eingeben, oder jemanden unterschreiben lassen, der keine hat</translation>
    </message>
    <message>
        <source>it is not said whose PIN this is</source>
        <translation>es ist nicht gesagt, wessen PIN das ist</translation>
    </message>
    <message>
        <source>name the person, too: --by for a gear officer&apos;s act, --sign for a signature</source>
        <translation>auch die Person nennen: --by bei dem, was Sache des Gerätewarts ist, --sign bei einer Unterschrift</translation>
    </message>
    <message>
        <source>the file of the PIN cannot be read: %1</source>
        <translation>die Datei mit der PIN lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>others can read this file: a PIN in it is no secret, and it is not used</source>
        <translation>andere können diese Datei lesen: eine PIN darin ist kein Geheimnis und wird nicht verwendet</translation>
    </message>
    <message>
        <source>make it yours alone with chmod 600, and think of a new PIN</source>
        <translation>sie mit chmod 600 für andere sperren und sich eine neue PIN ausdenken</translation>
    </message>
    <message>
        <source>a file of a PIN has one line</source>
        <translation>eine Datei mit einer PIN hat eine Zeile</translation>
    </message>
    <message>
        <source>write the PIN there and nothing else</source>
        <translation>die PIN hineinschreiben und sonst nichts</translation>
    </message>
    <message>
        <source>standard input cannot give the PIN and something else, too</source>
        <translation>die Standardeingabe kann nicht zugleich die PIN und etwas anderes liefern</translation>
    </message>
    <message>
        <source>give one of them in a file</source>
        <translation>eines von beiden in einer Datei angeben</translation>
    </message>
    <message>
        <source>boats are still kept at &apos;%1&apos;: %2</source>
        <translation>An „%1“ liegen noch Boote: %2</translation>
    </message>
    <message>
        <source>give them another place first</source>
        <translation>ihnen zuerst einen anderen Ort geben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; does not say what a word means</source>
        <translation>„%1“ sagt nicht, was ein Wort bedeutet</translation>
    </message>
    <message>
        <source>write &quot;column:word=meaning&quot;, several with commas between them</source>
        <translation>„Spalte:Wort=Bedeutung“ schreiben, mehrere mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>no item has the serial &apos;%1&apos;</source>
        <translation>kein Stück hat die Seriennummer „%1“</translation>
    </message>
    <message>
        <source>correct it, or name the item by its tag</source>
        <translation>sie berichtigen oder das Stück mit seinem Etikett nennen</translation>
    </message>
    <message>
        <source>more than one item has the serial &apos;%1&apos;</source>
        <translation>mehr als ein Stück hat die Seriennummer „%1“</translation>
    </message>
    <message>
        <source>name the item by its tag</source>
        <translation>das Stück mit seinem Etikett nennen</translation>
    </message>
    <message>
        <source>the club was never told what &apos;%1&apos; means</source>
        <translation>was „%1“ bedeutet, wurde dem Verein nie gesagt</translation>
    </message>
    <message>
        <source>give a word as `words` lists it</source>
        <translation>ein Wort angeben, wie `words` es aufführt</translation>
    </message>
    <message>
        <source>the number of cells in the row is %1, in the header %2: is a comma missing, or a cell with a comma not in quotes?</source>
        <translation>die Zahl der Zellen in der Zeile ist %1, in der Kopfzeile %2: Fehlt ein Komma, oder steht eine Zelle mit Komma nicht in Anführungszeichen?</translation>
    </message>
    <message>
        <source>no rule of the kit type &apos;%2&apos; waits for &apos;%1&apos;, nor for anything else</source>
        <translation>keine Regel der Art „%2“ wartet auf „%1“, und auch auf nichts anderes</translation>
    </message>
    <message>
        <source>no rule of the kit type &apos;%2&apos; waits for &apos;%1&apos;</source>
        <translation>keine Regel der Art „%2“ wartet auf „%1“</translation>
    </message>
    <message>
        <source>nothing is asked of &apos;%1&apos; (class &apos;%2&apos;): neither it nor its class has a manifest, so the boat will never be kit ready</source>
        <translation>von „%1“ (Klasse „%2“) wird nichts verlangt: Weder das Boot noch seine Klasse hat eine Packliste, so wird seine Ausrüstung nie bereit</translation>
    </message>
    <message>
        <source>nothing was merged, and to rename one of them now does not part them: do on one machine what the other one did since, and go on with copies of that one&apos;s file</source>
        <translation>nichts wurde zusammengeführt, und eines davon jetzt umzubenennen trennt sie nicht: auf einem Gerät nachholen, was auf dem anderen seither geschah, und mit Kopien von dessen Datei weiterarbeiten</translation>
    </message>
    <message>
        <source>the rule &apos;%1&apos; of the kit type &apos;%2&apos; has service records: %3</source>
        <translation>die Regel „%1“ der Art „%2“ hat Aufzeichnungen: %3</translation>
    </message>
    <message>
        <source>they would be records of nothing: change the rule, or withdraw them first</source>
        <translation>sie gehörten dann zu nichts: die Regel ändern, oder sie zuerst zurückziehen</translation>
    </message>
    <message>
        <source>the day of the service, %1, is still to come; today is %2</source>
        <translation>der Tag der Wartung, %1, kommt erst noch; heute ist %2</translation>
    </message>
    <message>
        <source>the day it happened, %1, is still to come; today is %2</source>
        <translation>der Tag, an dem es geschah, %1, kommt erst noch; heute ist %2</translation>
    </message>
    <message>
        <source>say lost, damaged, worn, expired or mistake</source>
        <translation>verloren (lost), beschädigt (damaged), verschlissen (worn), abgelaufen (expired) oder Fehleintrag (mistake) angeben</translation>
    </message>
    <message>
        <source>kit is registered as &apos;%1&apos;, counting what is written off: %2</source>
        <translation>Ausrüstung ist als „%1“ eingetragen, Ausgesondertes mitgezählt: %2</translation>
    </message>
    <message>
        <source>give that kit another type or size first, or rename &apos;%1&apos; instead</source>
        <translation>ihr erst eine andere Art oder Größe geben, oder stattdessen „%1“ umbenennen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; stands in manifests: %2</source>
        <translation>„%1“ steht in Packlisten: %2</translation>
    </message>
    <message>
        <source>take it out of these lines first</source>
        <translation>erst aus diesen Zeilen nehmen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has sizes or life rules: %2</source>
        <translation>„%1“ hat Größen oder Regeln: %2</translation>
    </message>
    <message>
        <source>remove these first</source>
        <translation>diese zuerst entfernen</translation>
    </message>
    <message>
        <source>in spreadsheets &apos;%1&apos; is what these words mean: %2</source>
        <translation>in Tabellen bedeuten diese Wörter „%1“: %2</translation>
    </message>
    <message>
        <source>forget these words first</source>
        <translation>diese Wörter zuerst vergessen lassen</translation>
    </message>
</context>
<context>
    <name>EventTally</name>
    <message>
        <source>at a time nobody wrote down</source>
        <translation>zu einer Zeit, die niemand notiert hat</translation>
    </message>
    <message>
        <source> by %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>%1 of %2 back</source>
        <translation>%1 von %2 zurück</translation>
    </message>
    <message>
        <source>Went out %1%2</source>
        <translation>Ausgelaufen %1%2</translation>
    </message>
    <message>
        <source>out</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>Is still out, or its return check is not signed</source>
        <translation>Ist noch draußen, oder die Rückkehrprüfung ist nicht unterschrieben</translation>
    </message>
    <message>
        <source>not seen since</source>
        <translation>seither nicht gesehen</translation>
    </message>
    <message>
        <source>no check has seen it since it went out on %1</source>
        <translation>keine Prüfung hat es gesehen, seit es mit %1 ausgelaufen ist</translation>
    </message>
    <message>
        <source>came back on another boat</source>
        <translation>kam mit einem anderen Boot zurück</translation>
    </message>
    <message>
        <source>on another boat</source>
        <translation>auf einem anderen Boot</translation>
    </message>
    <message>
        <source>Went out on %1, came back on %2. Carry it back to %1.</source>
        <translation>Mit %1 ausgelaufen, mit %2 zurückgekommen. Zurück zu %1 bringen.</translation>
    </message>
    <message>
        <source>Went out on %1, came back on %2; %3 went the other way. Change the two over: this one to %1, %3 to %2.</source>
        <translation>Mit %1 ausgelaufen, mit %2 zurückgekommen; %3 ging den umgekehrten Weg. Die beiden tauschen: dieses zu %1, %3 zu %2.</translation>
    </message>
    <message>
        <source>missing now</source>
        <translation>fehlt jetzt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>went out on %1</source>
        <translation>mit %1 ausgelaufen</translation>
    </message>
    <message>
        <source>Nothing that went out is missing</source>
        <translation>Von dem, was draußen war, fehlt nichts</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>%1 went out on %2</source>
        <translation>%1 mit %2 ausgelaufen</translation>
    </message>
    <message>
        <source>%1 came back on their own</source>
        <translation>%1 mit dem eigenen Boot zurück</translation>
    </message>
    <message>
        <source>%1 on another</source>
        <translation>%1 mit einem anderen</translation>
    </message>
    <message>
        <source>%1 missing now</source>
        <translation>%1 fehlt jetzt</translation>
    </message>
    <message>
        <source>nothing missing now</source>
        <translation>jetzt fehlt nichts</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Came back %1, signed by %2</source>
        <translation>Zurückgekommen %1, unterschrieben von %2</translation>
    </message>
</context>
<context>
    <name>EvidencePrintout</name>
    <message>
        <source>%1 · what was aboard</source>
        <translation>%1 · was an Bord war</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>taken from the record by, day</source>
        <translation>dem Protokoll entnommen von, am</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>signed by %1, %2: %3</source>
        <translation>unterschrieben von %1, %2: %3</translation>
    </message>
    <message>
        <source>No launch check of %1 was signed until %2: the record does not say what was aboard.</source>
        <translation>Bis %2 wurde keine Auslaufprüfung von %1 unterschrieben: Das Protokoll sagt nicht, was an Bord war.</translation>
    </message>
    <message>
        <source>%1 was in at %2: nothing was out with it.</source>
        <translation>%1 war %2 an Land: nichts war damit draußen.</translation>
    </message>
    <message>
        <source>%1 was out at %2, with %3 aboard.</source>
        <translation>%1 war %2 draußen, mit %3 an Bord.</translation>
    </message>
    <message>
        <source>People aboard: %1.</source>
        <translation>Leute an Bord: %1.</translation>
    </message>
    <message>
        <source>Launch check %1.</source>
        <translation>Auslaufprüfung %1.</translation>
    </message>
    <message>
        <source>Launched urgently: %1.</source>
        <translation>Dringend ausgelaufen: %1.</translation>
    </message>
    <message>
        <source>Return check %1.</source>
        <translation>Rückkehrprüfung %1.</translation>
    </message>
    <message>
        <source>No return check has been signed since.</source>
        <translation>Seither wurde keine Rückkehrprüfung unterschrieben.</translation>
    </message>
    <message>
        <source>undated by the rules of that day</source>
        <translation>nach den Regeln jenes Tages ohne Datum</translation>
    </message>
    <message>
        <source>out of date by the rules of that day</source>
        <translation>nach den Regeln jenes Tages abgelaufen oder überfällig</translation>
    </message>
    <message>
        <source>out of date by the rules of that day: %1</source>
        <translation>nach den Regeln jenes Tages abgelaufen oder überfällig: %1</translation>
    </message>
    <message>
        <source>nothing on it runs out</source>
        <translation>läuft nicht ab</translation>
    </message>
    <message>
        <source>in date until %1</source>
        <translation>gültig bis %1</translation>
    </message>
    <message>
        <source>by the camera</source>
        <translation>mit der Kamera</translation>
    </message>
    <message>
        <source>in a picture</source>
        <translation>auf einem Bild</translation>
    </message>
    <message>
        <source>by a hand-held scanner</source>
        <translation>mit dem Handscanner</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>getippt</translation>
    </message>
    <message>
        <source>counted for the manifest</source>
        <translation>zählte für die Packliste</translation>
    </message>
    <message>
        <source>counted for no line</source>
        <translation>zählte für keine Zeile</translation>
    </message>
    <message>
        <source>worn by %1</source>
        <translation>getragen von %1</translation>
    </message>
    <message>
        <source>seen %1 %2</source>
        <translation>gesehen %1 %2</translation>
    </message>
    <message>
        <source>a tag that the register did not know</source>
        <translation>ein Etikett, das das Verzeichnis nicht kannte</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The signature is number %1 of machine %2: %3</source>
        <translation>Die Unterschrift ist Nummer %1 von Gerät %2: %3</translation>
    </message>
    <message>
        <source>The record&apos;s newest hash: %1</source>
        <translation>Neueste Prüfsumme des Protokolls: %1</translation>
    </message>
    <message>
        <source>That is still to come: this is what the record says up to now.</source>
        <translation>Das liegt in der Zukunft: Dies sagt das Protokoll bis jetzt.</translation>
    </message>
    <message>
        <source>its tag is now %1</source>
        <translation>trägt jetzt das Etikett %1</translation>
    </message>
    <message>
        <source>%1, log of %2: %3</source>
        <translation>%1, Logbuch vom %2: %3</translation>
    </message>
    <message>
        <source>photographed %1</source>
        <translation>fotografiert %1</translation>
    </message>
    <message>
        <source>photographed %1, by %2</source>
        <translation>fotografiert %1, von %2</translation>
    </message>
    <message>
        <source>%1. The photograph is not the one that was recorded.</source>
        <translation>%1. Das Foto ist nicht das, das aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>%1 is called %2 now.</source>
        <translation>%1 heißt jetzt %2.</translation>
    </message>
    <message>
        <source>that check does not say whether it was in date</source>
        <translation>diese Prüfung sagt nicht, ob es noch gültig war</translation>
    </message>
</context>
<context>
    <name>Exchange</name>
    <message>
        <source>on %1, last written %2</source>
        <translation>auf %1, zuletzt geschrieben %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>auf %1</translation>
    </message>
    <message>
        <source>of this club</source>
        <translation>von diesem Verein</translation>
    </message>
    <message>
        <source>not of this club</source>
        <translation>nicht von diesem Verein</translation>
    </message>
    <message>
        <source>on %1, of another club</source>
        <translation>auf %1, von einem anderen Verein</translation>
    </message>
    <message>
        <source>on %1, no club file</source>
        <translation>auf %1, keine Vereinsdatei</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>on %1: %2</source>
        <translation>auf %1: %2</translation>
    </message>
    <message>
        <source>nothing of this club</source>
        <translation>nichts von diesem Verein</translation>
    </message>
    <message>
        <source>no file of this club yet: take a copy along</source>
        <translation>noch keine Datei dieses Vereins: eine Kopie mitnehmen</translation>
    </message>
    <message>
        <source>Nothing new would come in.</source>
        <translation>Es käme nichts Neues herein.</translation>
    </message>
    <message>
        <source>Would come in: %1.</source>
        <translation>Es kämen herein: %1.</translation>
    </message>
    <message>
        <source>Nothing goes there: the other file is done with afterwards.</source>
        <translation>Dorthin geht nichts: Die andere Datei ist danach erledigt.</translation>
    </message>
    <message>
        <source>Nothing goes there: that file, or its folder, cannot be written to.</source>
        <translation>Dorthin geht nichts: In diese Datei oder ihren Ordner kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Nothing new would go there.</source>
        <translation>Dorthin ginge nichts Neues.</translation>
    </message>
    <message>
        <source>Nothing new came in.</source>
        <translation>Es kam nichts Neues herein.</translation>
    </message>
    <message>
        <source>Came in: %1.</source>
        <translation>Hereingekommen: %1.</translation>
    </message>
    <message>
        <source>The other file is done with: put it away, and take a new copy along for that machine.</source>
        <translation>Die andere Datei ist erledigt: weglegen und für jenes Gerät eine neue Kopie mitnehmen.</translation>
    </message>
    <message>
        <source>But nothing went there: %1. Exchange again when that is mended.</source>
        <translation>Dorthin ging aber nichts: %1. Noch einmal austauschen, wenn das behoben ist.</translation>
    </message>
    <message>
        <source>Nothing new went there.</source>
        <translation>Dorthin ging nichts Neues.</translation>
    </message>
    <message>
        <source>Went there: %1.</source>
        <translation>Dorthin gegangen: %1.</translation>
    </message>
    <message>
        <source>Go on with the file that you trust, and put the other one away; or take what the other one holds in as that of a machine of its own.</source>
        <translation>Mit der Datei weitermachen, der zu trauen ist, und die andere weglegen; oder was die andere enthält, als das eines eigenen Geräts aufnehmen.</translation>
    </message>
</context>
<context>
    <name>FieldSentences</name>
    <message>
        <source>Why it is written off; it stands in the record.</source>
        <translation>Warum es ausgesondert wird; es steht im Protokoll.</translation>
    </message>
    <message>
        <source>One sentence on why; it stands in the record.</source>
        <translation>Ein Satz dazu, warum; er steht im Protokoll.</translation>
    </message>
    <message>
        <source>How many pieces arrived.</source>
        <translation>Wie viele Stück angekommen sind.</translation>
    </message>
    <message>
        <source>The day or month of manufacture, if it is known.</source>
        <translation>Tag oder Monat der Herstellung, falls bekannt.</translation>
    </message>
    <message>
        <source>Where the pieces are put.</source>
        <translation>Wohin die Stücke kommen.</translation>
    </message>
    <message>
        <source>The day that is stamped on the pieces, if there is one.</source>
        <translation>Der auf die Stücke gestempelte Tag, falls es einen gibt.</translation>
    </message>
    <message>
        <source>Who did the work that is recorded.</source>
        <translation>Wer die Arbeit getan hat, die festgehalten wird.</translation>
    </message>
    <message>
        <source>The day on which the work was done, as in 2026-03-14.</source>
        <translation>Der Tag, an dem die Arbeit getan wurde, etwa 2026-03-14.</translation>
    </message>
    <message>
        <source>What else is to be known of the work; may stay empty.</source>
        <translation>Was über die Arbeit sonst zu wissen ist; darf leer bleiben.</translation>
    </message>
    <message>
        <source>The inspection or service that is recorded for all items in the list.</source>
        <translation>Die Prüfung oder Wartung, die für alle Stücke der Liste festgehalten wird.</translation>
    </message>
    <message>
        <source>Shows only boats whose strip has these letters; a tag&apos;s code opens its boat.</source>
        <translation>Zeigt nur Boote, in deren Zeile diese Buchstaben stehen; der Code eines Etiketts öffnet sein Boot.</translation>
    </message>
    <message>
        <source>One sentence on what was done; the entry is closed with it.</source>
        <translation>Ein Satz dazu, was getan wurde; damit wird der Eintrag geschlossen.</translation>
    </message>
    <message>
        <source>The file that is made for the new club.</source>
        <translation>Die Datei, die für den neuen Verein angelegt wird.</translation>
    </message>
    <message>
        <source>The folder whose CSV files the new club begins with.</source>
        <translation>Der Ordner, mit dessen CSV-Dateien der neue Verein beginnt.</translation>
    </message>
    <message>
        <source>The new club&apos;s name, as it stands on every sheet.</source>
        <translation>Der Name des neuen Vereins, wie er auf jedem Blatt steht.</translation>
    </message>
    <message>
        <source>The code on a tag, with or without gaps; Enter takes it.</source>
        <translation>Der Code auf einem Etikett, mit oder ohne Lücken; Enter übernimmt ihn.</translation>
    </message>
    <message>
        <source>Who is aboard besides the driver; one box for each.</source>
        <translation>Wer außer dem Bootsführer an Bord ist; ein Feld für jeden.</translation>
    </message>
    <message>
        <source>One sentence on what is damaged; the thing is withdrawn with it.</source>
        <translation>Ein Satz dazu, was beschädigt ist; damit wird das Stück gesperrt.</translation>
    </message>
    <message>
        <source>Who drives the boat on this trip.</source>
        <translation>Wer das Boot auf dieser Fahrt führt.</translation>
    </message>
    <message>
        <source>Shows what falls due of one type of kit, or of all.</source>
        <translation>Zeigt die Fälligkeiten einer Art von Ausrüstung oder aller.</translation>
    </message>
    <message>
        <source>Shows what falls due of one size, or of all.</source>
        <translation>Zeigt die Fälligkeiten einer Größe oder aller.</translation>
    </message>
    <message>
        <source>The last day on which it belongs to the club, as in 2026-03-14.</source>
        <translation>Der letzte Tag, an dem es zum Verein gehört, etwa 2026-03-14.</translation>
    </message>
    <message>
        <source>The event whose checks are shown.</source>
        <translation>Das Ereignis, dessen Prüfungen gezeigt werden.</translation>
    </message>
    <message>
        <source>The event that the check is filed under.</source>
        <translation>Das Ereignis, unter dem die Prüfung abgelegt wird.</translation>
    </message>
    <message>
        <source>The boat whose evidence is looked up.</source>
        <translation>Das Boot, dessen Nachweis nachgeschlagen wird.</translation>
    </message>
    <message>
        <source>The day, and if wanted the time, that is asked about, as in 2026-03-14 06:00.</source>
        <translation>Der Tag, auf Wunsch mit Uhrzeit, nach dem gefragt wird, etwa 2026-03-14 06:00.</translation>
    </message>
    <message>
        <source>The check that is to be filed under another event.</source>
        <translation>Die Prüfung, die unter einem anderen Ereignis abgelegt werden soll.</translation>
    </message>
    <message>
        <source>How many such pieces are written at once.</source>
        <translation>Wie viele solche Stücke auf einmal geschrieben werden.</translation>
    </message>
    <message>
        <source>The day on which it was first used, if it is known.</source>
        <translation>Der Tag der ersten Benutzung, falls bekannt.</translation>
    </message>
    <message>
        <source>The boat or place where the piece belongs.</source>
        <translation>Das Boot oder der Ort, wohin das Stück gehört.</translation>
    </message>
    <message>
        <source>Whose own it is; empty for what belongs to the boat.</source>
        <translation>Wem es selbst gehört; leer, wenn es zum Boot gehört.</translation>
    </message>
    <message>
        <source>The serial number that the maker gave it, if there is one.</source>
        <translation>Die Seriennummer des Herstellers, falls es eine gibt.</translation>
    </message>
    <message>
        <source>The size that is printed on it.</source>
        <translation>Die Größe, die darauf gedruckt ist.</translation>
    </message>
    <message>
        <source>The day that is stamped on it, if there is one.</source>
        <translation>Der aufgestempelte Tag, falls es einen gibt.</translation>
    </message>
    <message>
        <source>The code on the tag of what turned up; Enter records that it is found.</source>
        <translation>Der Code auf dem Etikett dessen, was aufgetaucht ist; Enter hält den Fund fest.</translation>
    </message>
    <message>
        <source>The stocktake that what turned up is written into.</source>
        <translation>Die Inventur, in die eingetragen wird, was aufgetaucht ist.</translation>
    </message>
    <message>
        <source>The code on a tag whose history is shown.</source>
        <translation>Der Code auf einem Etikett, dessen Geschichte gezeigt wird.</translation>
    </message>
    <message>
        <source>The boat, person or place whose history is shown.</source>
        <translation>Das Boot, die Person oder der Ort, deren Geschichte gezeigt wird.</translation>
    </message>
    <message>
        <source>Where the district&apos;s server is, as it was told by whoever runs it.</source>
        <translation>Wo der Server des Bezirks ist, wie es dessen Betreiber gesagt hat.</translation>
    </message>
    <message>
        <source>Shows kit of one boat or place, or of all.</source>
        <translation>Zeigt Ausrüstung eines Bootes oder Ortes oder aller.</translation>
    </message>
    <message>
        <source>The order in which the kit is listed.</source>
        <translation>Die Reihenfolge, in der die Ausrüstung aufgeführt wird.</translation>
    </message>
    <message>
        <source>Finds kit by any of its words or by the code on its tag.</source>
        <translation>Findet Ausrüstung nach jedem ihrer Wörter oder nach dem Code auf ihrem Etikett.</translation>
    </message>
    <message>
        <source>What is done with all items that are ticked.</source>
        <translation>Was mit allen angehakten Stücken getan wird.</translation>
    </message>
    <message>
        <source>The boat, place or person that the ticked items go to.</source>
        <translation>Das Boot, der Ort oder die Person, zu denen die angehakten Stücke kommen.</translation>
    </message>
    <message>
        <source>Why the ticked items are written off.</source>
        <translation>Warum die angehakten Stücke ausgesondert werden.</translation>
    </message>
    <message>
        <source>Shows kit of one state, or of all.</source>
        <translation>Zeigt Ausrüstung eines Zustands oder jedes Zustands.</translation>
    </message>
    <message>
        <source>Shows kit of one type, or of all.</source>
        <translation>Zeigt Ausrüstung einer Art oder aller.</translation>
    </message>
    <message>
        <source>The boat that the entry is about.</source>
        <translation>Das Boot, um das es im Eintrag geht.</translation>
    </message>
    <message>
        <source>The code on the tag of the thing that it is about; may stay empty.</source>
        <translation>Der Code auf dem Etikett des Stücks, um das es geht; darf leer bleiben.</translation>
    </message>
    <message>
        <source>Whether the entry stops the boat until it is closed.</source>
        <translation>Ob der Eintrag das Boot sperrt, bis er geschlossen ist.</translation>
    </message>
    <message>
        <source>One sentence on what is the matter.</source>
        <translation>Ein Satz dazu, was los ist.</translation>
    </message>
    <message>
        <source>The type of kit that is asked for.</source>
        <translation>Die Art von Ausrüstung, die verlangt wird.</translation>
    </message>
    <message>
        <source>What a crew should know of this line; may stay empty.</source>
        <translation>Was eine Besatzung zu dieser Zeile wissen sollte; darf leer bleiben.</translation>
    </message>
    <message>
        <source>How many of it the boat must carry.</source>
        <translation>Wie viele davon das Boot mitführen muss.</translation>
    </message>
    <message>
        <source>The class or boat whose list is shown.</source>
        <translation>Die Klasse oder das Boot, deren Liste gezeigt wird.</translation>
    </message>
    <message>
        <source>The highest value that is allowed; empty: no bound.</source>
        <translation>Der höchste erlaubte Wert; leer: keine Grenze.</translation>
    </message>
    <message>
        <source>Whether the point is looked at, measured or timed.</source>
        <translation>Ob der Punkt angesehen, gemessen oder mit der Uhr genommen wird.</translation>
    </message>
    <message>
        <source>The lowest value that is allowed; empty: no bound.</source>
        <translation>Der niedrigste erlaubte Wert; leer: keine Grenze.</translation>
    </message>
    <message>
        <source>What is looked at or measured, in a few words.</source>
        <translation>Was angesehen oder gemessen wird, in wenigen Worten.</translation>
    </message>
    <message>
        <source>What a crew should know of this point; may stay empty.</source>
        <translation>Was eine Besatzung zu diesem Punkt wissen sollte; darf leer bleiben.</translation>
    </message>
    <message>
        <source>Whether it is asked before launching or after coming back.</source>
        <translation>Ob danach vor dem Auslaufen oder nach der Rückkehr gefragt wird.</translation>
    </message>
    <message>
        <source>The unit of what is measured, as in kPa.</source>
        <translation>Die Einheit des Messwerts, etwa kPa.</translation>
    </message>
    <message>
        <source>How many such pieces are written at once, each with a tag of its own.</source>
        <translation>Wie viele solche Stücke auf einmal geschrieben werden, jedes mit eigenem Etikett.</translation>
    </message>
    <message>
        <source>The type of the new kit, from the register.</source>
        <translation>Die Art der neuen Ausrüstung, aus dem Register.</translation>
    </message>
    <message>
        <source>The maker&apos;s label, scanned or typed; serial and lot are taken from it.</source>
        <translation>Das Etikett des Herstellers, gescannt oder getippt; Seriennummer und Charge werden ihm entnommen.</translation>
    </message>
    <message>
        <source>The maker and the model, as they stand on it.</source>
        <translation>Hersteller und Modell, wie sie darauf stehen.</translation>
    </message>
    <message>
        <source>What else is to be known of it; may stay empty.</source>
        <translation>Was sonst darüber zu wissen ist; darf leer bleiben.</translation>
    </message>
    <message>
        <source>Whose name stands in the record for what is done on these pages.</source>
        <translation>Wessen Name für das im Protokoll steht, was auf diesen Seiten getan wird.</translation>
    </message>
    <message>
        <source>The event that the check is filed under instead.</source>
        <translation>Das Ereignis, unter dem die Prüfung stattdessen abgelegt wird.</translation>
    </message>
    <message>
        <source>The new PIN once more, so that no slip of a finger is kept.</source>
        <translation>Die neue PIN noch einmal, damit kein Vertipper bleibt.</translation>
    </message>
    <message>
        <source>The new PIN; it is not shown while it is typed.</source>
        <translation>Die neue PIN; beim Tippen wird sie nicht gezeigt.</translation>
    </message>
    <message>
        <source>The PIN that holds until now.</source>
        <translation>Die PIN, die bis jetzt gilt.</translation>
    </message>
    <message>
        <source>The code on the tag of what was carried; Enter ticks its move off.</source>
        <translation>Der Code auf dem Etikett dessen, was getragen wurde; Enter hakt den Gang ab.</translation>
    </message>
    <message>
        <source>The place whose kit may be used.</source>
        <translation>Der Ort, dessen Ausrüstung benutzt werden darf.</translation>
    </message>
    <message>
        <source>Shows only rows that have all these words.</source>
        <translation>Zeigt nur Zeilen, in denen alle diese Wörter stehen.</translation>
    </message>
    <message>
        <source>Which rows of the register are shown: boats, people, places or types of kit.</source>
        <translation>Welche Zeilen des Registers gezeigt werden: Boote, Personen, Orte oder Arten von Ausrüstung.</translation>
    </message>
    <message>
        <source>The name that holds from now on, everywhere.</source>
        <translation>Der Name, der von nun an überall gilt.</translation>
    </message>
    <message>
        <source>Which of its names is changed.</source>
        <translation>Welcher ihrer Namen geändert wird.</translation>
    </message>
    <message>
        <source>How sure the plan shall be that no kit runs short.</source>
        <translation>Wie sicher der Plan sein soll, dass nichts knapp wird.</translation>
    </message>
    <message>
        <source>For how many months from today is planned.</source>
        <translation>Für wie viele Monate von heute an geplant wird.</translation>
    </message>
    <message>
        <source>Which inspection or service of it is recorded.</source>
        <translation>Welche Prüfung oder Wartung davon festgehalten wird.</translation>
    </message>
    <message>
        <source>Who signs the check.</source>
        <translation>Wer die Prüfung unterschreibt.</translation>
    </message>
    <message>
        <source>What one row of the table stands for.</source>
        <translation>Wofür eine Zeile der Tabelle steht.</translation>
    </message>
    <message>
        <source>Which sheet of the workbook is read.</source>
        <translation>Welches Blatt der Arbeitsmappe gelesen wird.</translation>
    </message>
    <message>
        <source>Who signs the stocktake.</source>
        <translation>Wer die Inventur unterschreibt.</translation>
    </message>
    <message>
        <source>The number of items that will be missing, as it is told above, before the stocktake is signed.</source>
        <translation>Die oben genannte Zahl der Stücke, die fehlen werden, bevor die Inventur unterschrieben wird.</translation>
    </message>
    <message>
        <source>The place whose kit is counted.</source>
        <translation>Der Ort, dessen Ausrüstung gezählt wird.</translation>
    </message>
    <message>
        <source>Tags of one boat or place, or of all.</source>
        <translation>Etiketten eines Bootes oder Ortes oder aller.</translation>
    </message>
    <message>
        <source>Tags of one type of kit, or of all.</source>
        <translation>Etiketten einer Art von Ausrüstung oder aller.</translation>
    </message>
    <message>
        <source>The paper that the tags are printed on.</source>
        <translation>Das Papier, auf das die Etiketten gedruckt werden.</translation>
    </message>
    <message>
        <source>How wide each symbol is printed.</source>
        <translation>Wie breit jedes Zeichen gedruckt wird.</translation>
    </message>
    <message>
        <source>The event that every check opened today is of.</source>
        <translation>Das Ereignis, zu dem jede heute begonnene Prüfung gehört.</translation>
    </message>
    <message>
        <source>When the boat was back, as in 09:40.</source>
        <translation>Wann das Boot zurück war, etwa 09:40.</translation>
    </message>
    <message>
        <source>How much fuel was used or filled in, in words.</source>
        <translation>Wie viel Kraftstoff verbraucht oder nachgefüllt wurde, in Worten.</translation>
    </message>
    <message>
        <source>How many hours the engine ran.</source>
        <translation>Wie viele Stunden der Motor lief.</translation>
    </message>
    <message>
        <source>What happened on the trip, in a sentence or two.</source>
        <translation>Was auf der Fahrt geschah, in ein, zwei Sätzen.</translation>
    </message>
    <message>
        <source>How often the boat was launched on this trip.</source>
        <translation>Wie oft das Boot auf dieser Fahrt zu Wasser ging.</translation>
    </message>
    <message>
        <source>When the boat left, as in 07:12.</source>
        <translation>Wann das Boot abgefahren ist, etwa 07:12.</translation>
    </message>
    <message>
        <source>The PIN of whoever is chosen; it is not shown while it is typed.</source>
        <translation>Die PIN der gewählten Person; beim Tippen wird sie nicht gezeigt.</translation>
    </message>
    <message>
        <source>Whose PIN is given.</source>
        <translation>Wessen PIN angegeben wird.</translation>
    </message>
    <message>
        <source>Why the boat goes out although kit is missing; it stands in the record.</source>
        <translation>Warum das Boot ausläuft, obwohl Ausrüstung fehlt; es steht im Protokoll.</translation>
    </message>
    <message>
        <source>Where the camera on the network is found, as its maker says.</source>
        <translation>Wo die Kamera im Netz zu finden ist, nach den Angaben des Herstellers.</translation>
    </message>
    <message>
        <source>The camera&apos;s password; it is kept nowhere, and asked for each time.</source>
        <translation>Das Passwort der Kamera; es wird nirgends aufbewahrt und jedes Mal erfragt.</translation>
    </message>
    <message>
        <source>The camera&apos;s user name; empty if it asks for none.</source>
        <translation>Der Benutzername der Kamera; leer, wenn sie nach keinem fragt.</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>the %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>the tag %1</source>
        <translation>Etikett %1</translation>
    </message>
    <message>
        <source>the %1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source> since %1</source>
        <translation> seit %1</translation>
    </message>
    <message>
        <source>the rule “%1”</source>
        <translation>der Regel „%1“</translation>
    </message>
    <message>
        <source>the rule “%1” for its %2</source>
        <translation>der Regel „%1“ (Teil: %2)</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hergestellt %1</translation>
    </message>
    <message>
        <source>first used %1</source>
        <translation>erstmals benutzt %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>aufgedruckt %1</translation>
    </message>
    <message>
        <source>registered %1, no record since</source>
        <translation>aufgenommen %1, seither kein Nachweis</translation>
    </message>
    <message>
        <source>last recorded %1</source>
        <translation>zuletzt nachgewiesen %1</translation>
    </message>
    <message>
        <source>%1 launches since the last record, the limit is %2</source>
        <translation>%1 Wasserungen seit dem letzten Nachweis, Grenze %2</translation>
    </message>
    <message>
        <source>%1 hours run since the last record, the limit is %2</source>
        <translation>%1 Betriebsstunden seit dem letzten Nachweis, Grenze %2</translation>
    </message>
    <message>
        <source> on %1</source>
        <translation> am %1</translation>
    </message>
    <message>
        <source>the expiry printed on it</source>
        <translation>das aufgedruckte Ablaufdatum</translation>
    </message>
    <message>
        <source>the day it was made</source>
        <translation>der Tag der Herstellung</translation>
    </message>
    <message>
        <source>the day of its first use</source>
        <translation>der Tag der ersten Benutzung</translation>
    </message>
    <message>
        <source>the day of its last record or first use</source>
        <translation>der Tag des letzten Nachweises oder der ersten Benutzung</translation>
    </message>
    <message>
        <source>it still counts within the tolerance: %1 now</source>
        <translation>innerhalb der Toleranz zählt es noch: jetzt %1</translation>
    </message>
    <message>
        <source>by the club&apos;s rule it still counts: %1</source>
        <translation>nach der Vereinsregel zählt es noch: %1</translation>
    </message>
    <message>
        <source>, its last good day was %1</source>
        <translation>, letzter guter Tag war der %1</translation>
    </message>
    <message>
        <source>%1 %2 by %3%4 (%5); %6.</source>
        <extracomment>%1 the item, %2 &quot;is out of date&quot;, %3 the rule, %4 the last good day, %5 how it is counted, %6 what to do</extracomment>
        <translation>%1 %2 nach %3%4 (%5); %6.</translation>
    </message>
    <message>
        <source>is out of date</source>
        <translation>ist abgelaufen</translation>
    </message>
    <message>
        <source>plan its replacement</source>
        <translation>Ersatz einplanen</translation>
    </message>
    <message>
        <source>take it out of the boat and bring one that is in date</source>
        <translation>aus dem Boot nehmen und ein gültiges holen</translation>
    </message>
    <message>
        <source>is overdue</source>
        <translation>ist überfällig</translation>
    </message>
    <message>
        <source>have it looked at and recorded</source>
        <translation>prüfen und eintragen lassen</translation>
    </message>
    <message>
        <source>have it looked at and recorded, or bring another</source>
        <translation>prüfen und eintragen lassen oder ein anderes holen</translation>
    </message>
    <message>
        <source>write that day in the register</source>
        <translation>diesen Tag im Verzeichnis nachtragen</translation>
    </message>
    <message>
        <source>%1 cannot be judged by %2: %3 is not known (%4); %5.</source>
        <translation>%1 lässt sich nach %2 nicht beurteilen: %3 ist nicht bekannt (%4); %5.</translation>
    </message>
    <message>
        <source>write that day in the register or bring another</source>
        <translation>diesen Tag im Verzeichnis nachtragen oder ein anderes holen</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>%1 falls due on %2 by %3 (%4); plan for it.</source>
        <translation>%1 wird am %2 fällig nach %3 (%4); einplanen.</translation>
    </message>
    <message>
        <source>%1 was not seen here: look for it; signing marks it as missing.</source>
        <translation>%1 wurde hier nicht gesehen: suchen; mit der Unterschrift gilt es als fehlend.</translation>
    </message>
    <message>
        <source> for %1</source>
        <translation> für %1</translation>
    </message>
    <message>
        <source>%1%2 not seen: find it, or bring another that counts.</source>
        <translation>%1%2 nicht gesehen: suchen oder ein anderes holen, das zählt.</translation>
    </message>
    <message>
        <source>%1 × %2%3 not seen: find them, or bring others that count.</source>
        <translation>%1 × %2%3 nicht gesehen: suchen oder andere holen, die zählen.</translation>
    </message>
    <message>
        <source> (seen: %1)</source>
        <translation> (gesehen: %1)</translation>
    </message>
    <message>
        <source>no %1 that fits was seen for %2%3: bring a size that fits; the label and a fit test decide.</source>
        <translation>%1 in passender Größe für %2 nicht gesehen%3: passende Größe holen; es entscheiden Aufdruck und Anprobe.</translation>
    </message>
    <message>
        <source>%1 in size %2 fits nobody named on board by the club&apos;s table: bring a size that fits; the label and a fit test decide.</source>
        <translation>%1 in Größe %2 passt nach der Tabelle niemandem an Bord: passende Größe holen; es entscheiden Aufdruck und Anprobe.</translation>
    </message>
    <message>
        <source>nobody is named, so no fit was checked: name the driver and the crew, or try each on.</source>
        <translation>niemand ist benannt, also wurde keine Größe geprüft: Bootsführer und Besatzung nennen oder alles anprobieren.</translation>
    </message>
    <message>
        <source>the fit of what %1 wears was not checked, because a measure or a size is not known: try it on.</source>
        <translation>die Größe für %1 wurde nicht geprüft, weil ein Maß oder eine Größe fehlt: anprobieren.</translation>
    </message>
    <message>
        <source>nobody is named, so whose kit it is was not checked: name the driver and the crew.</source>
        <translation>niemand ist benannt, also wurde nicht geprüft, wem was gehört: Bootsführer und Besatzung nennen.</translation>
    </message>
    <message>
        <source>nobody is named, so whose %1 it is was not checked: name the driver and the crew.</source>
        <translation>niemand ist benannt, also wurde bei %1 nicht geprüft, wem es gehört: Bootsführer und Besatzung nennen.</translation>
    </message>
    <message>
        <source>%1 belongs to nobody named on board: each takes their own.</source>
        <translation>%1 gehört niemandem an Bord: Jede Person nimmt das Eigene.</translation>
    </message>
    <message>
        <source>%1 belongs to %2, who is not named on board: each takes their own.</source>
        <translation>%1 gehört %2, nicht an Bord: Jede Person nimmt das Eigene.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>the point “%1” is open: do it and record it.</source>
        <translation>Prüfpunkt „%1“ ist offen: erledigen und eintragen.</translation>
    </message>
    <message>
        <source>outside %1 to %2%3</source>
        <translation>außerhalb von %1 bis %2%3</translation>
    </message>
    <message>
        <source>below %1%2</source>
        <translation>unter %1%2</translation>
    </message>
    <message>
        <source>above %1%2</source>
        <translation>über %1%2</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>its value</source>
        <translation>sein Wert</translation>
    </message>
    <message>
        <source>the point “%1”: %2 is %3; put it right and record it again.</source>
        <translation>Prüfpunkt „%1“: %2 liegt %3; in Ordnung bringen und neu eintragen.</translation>
    </message>
    <message>
        <source>the boat&apos;s log</source>
        <translation>das Logbuch des Boots</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>das Logbuch zu %1</translation>
    </message>
    <message>
        <source>%1 has an open entry%2: “%3”; see to it and close it.</source>
        <translation>%1 hat einen offenen Eintrag%2: „%3“; beheben und den Eintrag erledigen.</translation>
    </message>
    <message>
        <source>%1 belongs to %2: it counts here; put it back there afterwards.</source>
        <translation>%1 gehört zu %2: Es zählt hier; danach dorthin zurückbringen.</translation>
    </message>
    <message>
        <source>%1 went out on %2 and was not seen again: look for it, and ask who launched.</source>
        <translation>%1 lief mit %2 aus und wurde nicht wieder gesehen: suchen und die fragen, die ausgelaufen sind.</translation>
    </message>
    <message>
        <source>%1 went out on %2, not on this boat: put it back there.</source>
        <translation>%1 lief mit %2 aus, nicht mit diesem Boot: dorthin zurückbringen.</translation>
    </message>
    <message>
        <source>%1 has its home at %2: bring it there, or give it its home here.</source>
        <translation>%1 gehört zu %2: dorthin bringen oder hier eintragen.</translation>
    </message>
    <message>
        <source>%1 is more than this boat&apos;s list asks for: take it out.</source>
        <translation>%1 ist mehr, als die Packliste dieses Boots verlangt: herausnehmen.</translation>
    </message>
    <message>
        <source>%1 is more than this boat&apos;s list asks for: see that it is meant to be here.</source>
        <translation>%1 ist mehr, als die Packliste dieses Boots verlangt: klären, ob es hierher gehört.</translation>
    </message>
    <message>
        <source>%1 is unserviceable%2: leave it ashore until it is released.</source>
        <translation>%1 ist gesperrt%2: an Land lassen, bis es freigegeben ist.</translation>
    </message>
    <message>
        <source>%1 was marked missing%2 and is found: tell the gear officer where it was.</source>
        <translation>%1 galt als fehlend%2 und ist gefunden: dem Gerätewart sagen, wo es war.</translation>
    </message>
    <message>
        <source>%1 is not in the register, so it does not count: have the thing registered.</source>
        <translation>%1 steht nicht im Verzeichnis und zählt deshalb nicht: aufnehmen lassen.</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>keine Quelle angegeben</translation>
    </message>
    <message>
        <source>source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> vom %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 launches, never recorded, the limit is %2</source>
        <translation>%1 Wasserungen, nie nachgewiesen, Grenze %2</translation>
    </message>
    <message>
        <source>%1 hours run, never recorded, the limit is %2</source>
        <translation>%1 Betriebsstunden, nie nachgewiesen, Grenze %2</translation>
    </message>
    <message>
        <source>nothing is asked of this boat: its class “%1” has no manifest with a required line; write one.</source>
        <translation>von diesem Boot wird nichts verlangt: Seine Klasse „%1“ hat keine Packliste mit einer Pflichtzeile; eine schreiben.</translation>
    </message>
    <message>
        <source>the point “%1”: %2 is inside the range your club entered, but about %3%4 afloat is %5 (a first estimate); measure again on the water.</source>
        <translation>Prüfpunkt „%1“: %2 liegt im Bereich, den der Verein eingetragen hat, aber etwa %3%4 im Wasser liegt %5 (erste Schätzung); auf dem Wasser nachmessen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is written off%2%3: take it away.</source>
        <translation>%1 ist ausgesondert%2%3: wegnehmen.</translation>
    </message>
</context>
<context>
    <name>FitOut</name>
    <message>
        <source>All that is new</source>
        <translation>Alles Neue</translation>
    </message>
    <message>
        <source>%1 no. %2, new</source>
        <translation>%1 Nr. %2, neu</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>Größe %1</translation>
    </message>
    <message>
        <source>no size yet</source>
        <translation>noch ohne Größe</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hergestellt %1</translation>
    </message>
    <message>
        <source>first used %1</source>
        <translation>zuerst gebraucht %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Aufdruck %1</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>gehört %1</translation>
    </message>
    <message>
        <source>nobody&apos;s yet</source>
        <translation>noch niemandes</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 neu</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>not filled</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>%1 of %2 there</source>
        <translation>%1/%2 da</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>What is written here is written for each of them.</source>
        <translation>Was hier steht, gilt für jedes davon.</translation>
    </message>
</context>
<context>
    <name>GearPages</name>
    <message>
        <source>&amp;Missing</source>
        <translation>&amp;Fehlt</translation>
    </message>
    <message>
        <source>&amp;Events</source>
        <translation>&amp;Einsätze</translation>
    </message>
    <message>
        <source>&amp;Kit</source>
        <translation>&amp;Ausrüstung</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation>&amp;Werkbank</translation>
    </message>
    <message>
        <source>&amp;Stocktake</source>
        <translation>&amp;Inventur</translation>
    </message>
    <message>
        <source>&amp;Log</source>
        <translation>&amp;Logbuch</translation>
    </message>
    <message>
        <source>Make &amp;ready</source>
        <translation>K&amp;larmachen</translation>
    </message>
    <message>
        <source>&amp;Due</source>
        <translation>Fälli&amp;g</translation>
    </message>
    <message>
        <source>Re&amp;placement</source>
        <translation>E&amp;rsatz</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>E&amp;tiketten</translation>
    </message>
    <message>
        <source>Rec&amp;ord</source>
        <translation>Pr&amp;otokoll</translation>
    </message>
    <message>
        <source>Mani&amp;fests</source>
        <translation>Pack&amp;listen</translation>
    </message>
    <message>
        <source>Set &amp;up</source>
        <translation>A&amp;ufbau</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>Ei&amp;nlesen</translation>
    </message>
    <message>
        <source>Re&amp;gister</source>
        <translation>&amp;Verzeichnis</translation>
    </message>
    <message>
        <source>E&amp;xchange</source>
        <translation>Austaus&amp;ch</translation>
    </message>
</context>
<context>
    <name>HistoryWords</name>
    <message>
        <source>stocktake</source>
        <translation>Inventur</translation>
    </message>
    <message>
        <source>return check</source>
        <translation>Rückkehrprüfung</translation>
    </message>
    <message>
        <source>launch check</source>
        <translation>Auslaufprüfung</translation>
    </message>
    <message>
        <source>kit complete</source>
        <translation>Ausrüstung vollständig</translation>
    </message>
    <message>
        <source>kit incomplete</source>
        <translation>Ausrüstung unvollständig</translation>
    </message>
    <message>
        <source>kit complete, with remarks</source>
        <translation>Ausrüstung vollständig, mit Hinweisen</translation>
    </message>
    <message>
        <source>by the camera</source>
        <translation>mit der Kamera</translation>
    </message>
    <message>
        <source>in a picture</source>
        <translation>auf einem Bild</translation>
    </message>
    <message>
        <source>by a hand-held scanner</source>
        <translation>mit dem Handscanner</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>getippt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>marked missing</source>
        <translation>als fehlend vermerkt</translation>
    </message>
    <message>
        <source>withdrawn: unserviceable</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>written off: %1</source>
        <translation>ausgesondert: %1</translation>
    </message>
    <message>
        <source>back in use: serviceable</source>
        <translation>wieder einsatzbereit</translation>
    </message>
    <message>
        <source>entered in the register: %1</source>
        <translation>ins Verzeichnis aufgenommen: %1</translation>
    </message>
    <message>
        <source>changed in the register: %1</source>
        <translation>im Verzeichnis geändert: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not passed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>%1 on %2: %3</source>
        <translation>%1 am %2: %3</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>log entry “%1” closed: %2</source>
        <translation>Eintrag „%1“ erledigt: %2</translation>
    </message>
    <message>
        <source>log entry: %1 (closed %2: %3)</source>
        <translation>Eintrag: %1 (erledigt %2: %3)</translation>
    </message>
    <message>
        <source>log entry: %1</source>
        <translation>Eintrag: %1</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>launches: %1</source>
        <translation>Wasserungen: %1</translation>
    </message>
    <message>
        <source>used on %1: %2</source>
        <translation>benutzt am %1: %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>part %1: %2</source>
        <translation>Teil %1: %2</translation>
    </message>
    <message>
        <source>manifest, %1: %2</source>
        <translation>Packliste, %1: %2</translation>
    </message>
    <message>
        <source>point %1: %2</source>
        <translation>Prüfpunkt %1: %2</translation>
    </message>
    <message>
        <source>written in the register</source>
        <translation>ins Verzeichnis geschrieben</translation>
    </message>
    <message>
        <source>written in the register: %1</source>
        <translation>ins Verzeichnis geschrieben: %1</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>niemand genannt</translation>
    </message>
    <message>
        <source>aboard: %1</source>
        <translation>an Bord: %1</translation>
    </message>
    <message>
        <source>fuel: %1</source>
        <translation>Kraftstoff: %1</translation>
    </message>
    <message>
        <source>log of the operation: %1</source>
        <translation>Bericht der Fahrt: %1</translation>
    </message>
    <message>
        <source>%1 signed: %2</source>
        <translation>%1 unterschrieben: %2</translation>
    </message>
    <message>
        <source>%1; urgent: %2</source>
        <translation>%1; dringend: %2</translation>
    </message>
    <message>
        <source>%1 of %2 begun</source>
        <translation>%1 von %2 begonnen</translation>
    </message>
    <message>
        <source>seen in a check, %1</source>
        <translation>in einer Prüfung gesehen, %1</translation>
    </message>
    <message>
        <source>filed under %1</source>
        <translation>abgelegt unter %1</translation>
    </message>
    <message>
        <source>new tag %1</source>
        <translation>neues Etikett %1</translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation>, von %1</translation>
    </message>
    <message>
        <source>%1 · number %2 of machine %3</source>
        <translation>%1 · Nummer %2 von Gerät %3</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>the last of it taken back</source>
        <translation>das Letzte davon zurückgenommen</translation>
    </message>
    <message>
        <source>check left; nothing was recorded in it</source>
        <translation>Prüfung verlassen; darin wurde nichts eingetragen</translation>
    </message>
    <message>
        <source>check closed unsigned: %1</source>
        <translation>Prüfung ohne Unterschrift geschlossen: %1</translation>
    </message>
    <message>
        <source>use on %1 taken back</source>
        <translation>Nutzung am %1 zurückgenommen</translation>
    </message>
    <message>
        <source>writing off taken back: %1</source>
        <translation>Aussondern zurückgenommen: %1</translation>
    </message>
    <message>
        <source>%1 is called %2 from here on</source>
        <translation>%1 heißt von hier an %2</translation>
    </message>
    <message>
        <source>%1, filed under %2</source>
        <translation>%1, abgelegt unter %2</translation>
    </message>
    <message>
        <source>record of %1 on %2 withdrawn: %3</source>
        <translation>Nachweis %1 vom %2 zurückgenommen: %3</translation>
    </message>
    <message>
        <source>photograph of “%1”</source>
        <translation>Foto zu „%1“</translation>
    </message>
    <message>
        <source>photograph of it</source>
        <translation>Foto davon</translation>
    </message>
    <message>
        <source>PIN set</source>
        <translation>PIN gesetzt</translation>
    </message>
    <message>
        <source>PIN reset by whoever owns the file</source>
        <translation>PIN zurückgesetzt, vom Besitzer der Datei</translation>
    </message>
    <message>
        <source>PIN removed</source>
        <translation>PIN entfernt</translation>
    </message>
    <message>
        <source>signatures are to be proven by PIN</source>
        <translation>Unterschriften sind mit PIN zu belegen</translation>
    </message>
    <message>
        <source>signatures need no PIN any more</source>
        <translation>Unterschriften brauchen keine PIN mehr</translation>
    </message>
    <message>
        <source>this machine is called %1</source>
        <translation>dieses Gerät heißt %1</translation>
    </message>
    <message>
        <source>measures or PIN erased</source>
        <translation>Körpermaße oder PIN gelöscht</translation>
    </message>
    <message>
        <source>in a spreadsheet, “%1” means “%2”</source>
        <translation>in einer Tabelle bedeutet „%1“: „%2“</translation>
    </message>
    <message>
        <source>a photograph taken away: it was of something else</source>
        <translation>ein Foto weggenommen: es zeigte etwas anderes</translation>
    </message>
    <message>
        <source>in a spreadsheet, what “%1” means is asked again</source>
        <translation>in einer Tabelle wird wieder gefragt, was „%1“ bedeutet</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
</context>
<context>
    <name>Kit</name>
    <message>
        <source>made %1</source>
        <translation>hergestellt %1</translation>
    </message>
    <message>
        <source>first used %1</source>
        <translation>erster Gebrauch %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Aufdruck %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>not due: no such event recorded</source>
        <translation>nicht fällig: kein solches Ereignis eingetragen</translation>
    </message>
    <message>
        <source>not due: %1 of %2</source>
        <translation>nicht fällig: %1 von %2</translation>
    </message>
    <message>
        <source>does not count any more</source>
        <translation>zählt nicht mehr</translation>
    </message>
    <message>
        <source>good</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>due soon, or with a remark</source>
        <translation>bald fällig, oder mit Hinweis</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>Its kit type has no rule that applies to it</source>
        <translation>Für diese Art Ausrüstung gilt keine Regel</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>open in the log</source>
        <translation>offen im Logbuch</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>history, newest first</source>
        <translation>Verlauf, Neuestes zuerst</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>no home</source>
        <translation>ohne Platz</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, since %2</source>
        <translation>%1, seit %2</translation>
    </message>
    <message>
        <source>Home: %1</source>
        <translation>Platz: %1</translation>
    </message>
    <message>
        <source>maker %1</source>
        <translation>Hersteller %1</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>batch %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>home</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>look, something is due; %1</source>
        <translation>hinsehen, etwas ist fällig; %1</translation>
    </message>
    <message>
        <source>no date is known for %1</source>
        <translation>für %1 ist kein Datum bekannt</translation>
    </message>
    <message>
        <source>out of date by the rule “%1”</source>
        <translation>abgelaufen nach der Regel „%1“</translation>
    </message>
    <message>
        <source>%1 is due</source>
        <translation>%1 ist fällig</translation>
    </message>
    <message>
        <source>%1, but does not count: %2</source>
        <translation>%1, zählt aber nicht: %2</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>wessen</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>next due</source>
        <translation>nächste Frist</translation>
    </message>
    <message>
        <source>serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>no date: %1</source>
        <translation>ohne Datum: %1</translation>
    </message>
    <message>
        <source>now: %1</source>
        <translation>jetzt: %1</translation>
    </message>
</context>
<context>
    <name>LabelSheet</name>
    <message>
        <source>Tags</source>
        <translation>Etiketten</translation>
    </message>
</context>
<context>
    <name>Lists</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>open, stops it</source>
        <translation>offen, gesperrt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 written off, not listed.</source>
        <translation>%1 ausgesondert, nicht aufgeführt.</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>home</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>gehört</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>next due</source>
        <translation>nächste Fälligkeit</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Nichts fehlt.</translation>
    </message>
    <message>
        <source>%1 missing, the longest first.</source>
        <translation>%1 vermisst, zuerst was am längsten fehlt.</translation>
    </message>
    <message>
        <source>boat</source>
        <translation>Boot</translation>
    </message>
    <message>
        <source>missing since</source>
        <translation>vermisst seit</translation>
    </message>
    <message>
        <source>how it was lost from sight</source>
        <translation>wie es aus den Augen kam</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Nothing falls due %1.</source>
        <translation>%1 wird nichts fällig.</translation>
    </message>
    <message>
        <source>%1 overdue, undated or %2.</source>
        <translation>%1 überfällig, ohne Datum oder %2.</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>The log is empty.</source>
        <translation>Das Logbuch ist leer.</translation>
    </message>
    <message>
        <source>%1 of %2.</source>
        <translation>%1 von %2.</translation>
    </message>
    <message>
        <source>about</source>
        <translation>worüber</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>what is the matter</source>
        <translation>was los ist</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>closed on</source>
        <translation>erledigt am</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>Boats</source>
        <translation>Boote</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Launched urgently, kit incomplete: %1</source>
        <translation>Dringend ausgelaufen, Ausrüstung unvollständig: %1</translation>
    </message>
    <message>
        <source>No boats yet.</source>
        <translation>Noch keine Boote.</translation>
    </message>
    <message>
        <source>%1, %2 not ready.</source>
        <translation>%1, davon %2 nicht klar.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1, %2 (%3)</source>
        <extracomment>the head of a list that is sent to somebody: %1 the list, %2 the day, %3 the club</extracomment>
        <translation>%1, %2 (%3)</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>Etikett oder Zahl</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>in the place of: %1</source>
        <translation>anstelle von: %1</translation>
    </message>
    <message>
        <source>Stocktake</source>
        <translation>Inventur</translation>
    </message>
    <message>
        <source>Nothing is to be counted.</source>
        <translation>Es ist nichts zu zählen.</translation>
    </message>
    <message>
        <source>%1 to count.</source>
        <translation>%1 zu zählen.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>What is missing or written off, and what a boat has out, is not listed. What lies here and is not listed has its home elsewhere: note its tag.</source>
        <translation>Was fehlt oder ausgesondert ist und was ein Boot draußen hat, steht nicht auf der Liste. Was hier liegt und nicht auf der Liste steht, gehört woandershin: sein Etikett notieren.</translation>
    </message>
    <message>
        <source>Make ready</source>
        <translation>Klarmachen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
</context>
<context>
    <name>MakeReady</name>
    <message>
        <source>From the boat %1 to %2:</source>
        <translation>Vom Boot %1 zu %2:</translation>
    </message>
    <message>
        <source>From %1 to %2:</source>
        <translation>Von %1 zu %2:</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>Left out, short of: %1.</source>
        <translation>Bleibt zurück, es fehlt: %1.</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>bleibt zurück</translation>
    </message>
    <message>
        <source>Not required, and short: %1.</source>
        <translation>Nicht Pflicht, aber es fehlt: %1.</translation>
    </message>
    <message>
        <source>can be made complete</source>
        <translation>kann vollständig werden</translation>
    </message>
    <message>
        <source>Can be made complete.</source>
        <translation>Kann vollständig werden.</translation>
    </message>
    <message>
        <source>Can be made complete. %1</source>
        <translation>Kann vollständig werden. %1</translation>
    </message>
    <message>
        <source>aboard %1</source>
        <translation>an Bord von %1</translation>
    </message>
    <message>
        <source>place not known</source>
        <translation>Ort unbekannt</translation>
    </message>
    <message>
        <source>No boat is in to be made ready.</source>
        <translation>Kein Boot ist da, das klarzumachen wäre.</translation>
    </message>
    <message>
        <source>%1 of %2 boats can be made complete</source>
        <translation>%1 von %2 Booten können vollständig werden</translation>
    </message>
    <message>
        <source>%1; nothing has to be moved.</source>
        <translation>%1; nichts muss umgeräumt werden.</translation>
    </message>
    <message>
        <source>%1, with %2.</source>
        <translation>%1, mit %2.</translation>
    </message>
    <message>
        <source>Best possible: no other plan makes more, or more important, boats complete.</source>
        <translation>Besser geht es nicht: Kein anderer Plan macht mehr oder wichtigere Boote vollständig.</translation>
    </message>
    <message>
        <source>No other plan makes more, or more important, boats complete. Of the lines that are not required it fills %1; no plan fills more than %2.</source>
        <translation>Kein anderer Plan macht mehr oder wichtigere Boote vollständig. Von den Zeilen, die nicht Pflicht sind, füllt er %1; kein Plan füllt mehr als %2.</translation>
    </message>
    <message>
        <source>The time ran out. The boats&apos; priorities add up to %1; no plan reaches more than %2.</source>
        <translation>Die Zeit ging zu Ende. Die Prioritäten der vollständigen Boote ergeben zusammen %1; kein Plan erreicht mehr als %2.</translation>
    </message>
    <message>
        <source>Out, and not planned: %1.</source>
        <translation>Draußen und nicht geplant: %1.</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>in the place of: %1</source>
        <translation>anstelle von: %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>to carry</source>
        <translation>zu tragen</translation>
    </message>
    <message>
        <source>Nothing is asked of it, so no check of it is complete: write its manifest.</source>
        <translation>Von ihm wird nichts verlangt, so ist keine Prüfung vollständig: seine Packliste schreiben.</translation>
    </message>
    <message>
        <source>%1 of 1 boat can be made complete</source>
        <translation>%1 von 1 Boot kann vollständig werden</translation>
    </message>
    <message>
        <source>nothing is asked</source>
        <translation>nichts verlangt</translation>
    </message>
</context>
<context>
    <name>Manifests</name>
    <message>
        <source>return</source>
        <translation>Rückkehr</translation>
    </message>
    <message>
        <source>launch</source>
        <translation>Auslaufen</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigen</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>%1; class: %2</source>
        <translation>%1; Klasse: %2</translation>
    </message>
    <message>
        <source>not %1</source>
        <translation>nicht %1</translation>
    </message>
    <message>
        <source>%1, not required</source>
        <translation>%1, nicht Pflicht</translation>
    </message>
    <message>
        <source>different today</source>
        <translation>heute anders</translation>
    </message>
    <message>
        <source>only today: %1</source>
        <translation>nur heute: %1</translation>
    </message>
    <message>
        <source>not asked then</source>
        <translation>damals nicht verlangt</translation>
    </message>
    <message>
        <source>%1 added: %2</source>
        <translation>%1 dazu: %2</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>%1: another note</source>
        <translation>%1: andere Anmerkung</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>by an import of sheets</source>
        <translation>durch Einlesen von Tabellen</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>%1: %2 and %3</source>
        <translation>%1: %2 und %3</translation>
    </message>
    <message>
        <source>%1; %2 unlike its class, %3.</source>
        <translation>%1; %2 anders als die Klasse %3.</translation>
    </message>
    <message>
        <source>%1, all as its class, %2.</source>
        <translation>%1, alles wie die Klasse %2.</translation>
    </message>
    <message>
        <source>%1 (%2 own)</source>
        <translation>%1 (%2 eigene)</translation>
    </message>
    <message>
        <source>%1. Boats: %2.</source>
        <translation>%1. Boote: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <translation>%1, oder %2</translation>
    </message>
    <message>
        <source>a look</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>required</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Prüfpunkt</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht verlangt</translation>
    </message>
    <message>
        <source>another note</source>
        <translation>andere Anmerkung</translation>
    </message>
    <message>
        <source>The first</source>
        <translation>Die erste</translation>
    </message>
    <message>
        <source>holds now</source>
        <translation>gilt jetzt</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Asked from %1</source>
        <translation>Verlangt seit %1</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1; written %2.</source>
        <translation>%1; geschrieben %2.</translation>
    </message>
    <message>
        <source>%1 No check was signed by it.</source>
        <translation>%1 Keine Prüfung wurde danach unterschrieben.</translation>
    </message>
    <message>
        <source>%1 %2, the last of %3 at %4 by %5.</source>
        <translation>%1 %2, zuletzt die von %3, %4, durch %5.</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1: %2 statt %3</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>nicht Pflicht</translation>
    </message>
    <message>
        <source>class: %1</source>
        <translation>Klasse: %1</translation>
    </message>
    <message>
        <source>own, like its class</source>
        <translation>eigene, wie die Klasse</translation>
    </message>
    <message>
        <source>by nobody named</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>a measure</source>
        <translation>messen</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>nach der Uhr</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1. No boat has this class: nothing is asked by it.</source>
        <translation>%1. Kein Boot hat diese Klasse: nach ihr wird nichts verlangt.</translation>
    </message>
</context>
<context>
    <name>Marks</name>
    <message>
        <source>still to find</source>
        <translation>fehlt noch</translation>
    </message>
    <message>
        <source>look</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>not asked here</source>
        <translation>hier nicht gefragt</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>Nothing new</source>
        <translation>Nichts Neues</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 was seen on %2 and on %3 within twelve hours: look where it is</source>
        <translation>%1 wurde binnen zwölf Stunden auf %2 und auf %3 gesehen: nachsehen, wo es ist</translation>
    </message>
    <message>
        <source>%1 and %2 have the same serial %3: they may be one thing that was registered twice</source>
        <translation>%1 und %2 haben dieselbe Seriennummer %3: sie können ein Stück sein, das zweimal eingetragen wurde</translation>
    </message>
    <message>
        <source>%1 and %2 may be two names for the same: rename one, or leave both</source>
        <translation>%1 und %2 können zwei Namen für dasselbe sein: eins umbenennen oder beide lassen</translation>
    </message>
    <message>
        <source>%1 of %2 was changed on two machines within an hour: the newer one holds</source>
        <translation>%1 von %2 wurde binnen einer Stunde auf zwei Geräten geändert: das Neuere gilt</translation>
    </message>
    <message>
        <source>%1 was launched twice without a return between, by two machines</source>
        <translation>%1 ist auf zwei Geräten zweimal ausgelaufen, ohne Rückkehr dazwischen</translation>
    </message>
    <message>
        <source>A check of %1 was signed on two machines: the first signature holds</source>
        <translation>Eine Prüfung von %1 wurde auf zwei Geräten unterschrieben: die erste Unterschrift gilt</translation>
    </message>
    <message>
        <source>The PIN of %1 counts here no more, and no other gear officer has one: everything is open on this machine until a PIN is set here</source>
        <translation>Die PIN von %1 gilt hier nicht mehr, und kein anderer Gerätewart hat eine: Auf diesem Gerät ist alles offen, bis hier eine PIN gesetzt wird</translation>
    </message>
    <message>
        <source>A PIN of %1 came in and opens a gear officer&apos;s acts here now: ask who set it</source>
        <translation>Eine PIN von %1 ist hereingekommen und öffnet hier jetzt, was nur Gerätewarte tun: fragen, wer sie gesetzt hat</translation>
    </message>
    <message>
        <source>The PIN of %1 counts here no more: ask who took it away</source>
        <translation>Die PIN von %1 gilt hier nicht mehr: fragen, wer sie weggenommen hat</translation>
    </message>
    <message>
        <source>One thing was renamed on two machines, to %1 and to %2: it is called %1 now</source>
        <translation>Eine Sache wurde auf zwei Geräten umbenannt, in %1 und in %2: Sie heißt jetzt %1</translation>
    </message>
    <message>
        <source>%1 was taken out of the register on one machine and is used on another: it is there again</source>
        <translation>%1 wurde auf einem Gerät aus dem Verzeichnis genommen und wird auf einem anderen gebraucht: es ist wieder da</translation>
    </message>
</context>
<context>
    <name>MissingList</name>
    <message>
        <source>nobody knows since when</source>
        <translation>niemand weiß, seit wann</translation>
    </message>
    <message>
        <source>since today</source>
        <translation>seit heute</translation>
    </message>
    <message>
        <source>since %1, %2</source>
        <translation>seit %1, %2</translation>
    </message>
    <message>
        <source>last seen: %1</source>
        <translation>zuletzt gesehen: %1</translation>
    </message>
    <message>
        <source>no check has seen it</source>
        <translation>keine Prüfung hat es gesehen</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Nichts fehlt.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. The longest: %2, since %3.</source>
        <translation>%1. Am längsten: %2, seit %3.</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Ask %1, who took it out on %2.</source>
        <translation>%1 fragen: mit %2 ging es hinaus.</translation>
    </message>
    <message>
        <source>Ask %1, who signed the check that did not see it.</source>
        <translation>%1 fragen: Von dort stammt die Unterschrift unter der Prüfung, die es nicht sah.</translation>
    </message>
    <message>
        <source>Look at %1, where it was seen last.</source>
        <translation>Bei %1 nachsehen, dort wurde es zuletzt gesehen.</translation>
    </message>
    <message>
        <source>Look through %1 and what is stowed with it.</source>
        <translation>%1 durchsehen und was dabei liegt.</translation>
    </message>
    <message>
        <source>No check has seen it: look through every boat and shelf.</source>
        <translation>Keine Prüfung hat es gesehen: jedes Boot und Regal durchsehen.</translation>
    </message>
</context>
<context>
    <name>OrderCalendar</name>
    <message>
        <source>Nothing runs short until today: plan anew</source>
        <translation>Bis heute wird nichts knapp: neu planen</translation>
    </message>
</context>
<context>
    <name>OrderSheet</name>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>order by</source>
        <translation>bestellen bis</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>each</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>ordered on</source>
        <translation>bestellt am</translation>
    </message>
    <message>
        <source>▲ late: %1</source>
        <translation>▲ zu spät: %1</translation>
    </message>
    <message>
        <source>%1; wanted %2, in stock %3</source>
        <translation>%1; gebraucht %2, vorhanden %3</translation>
    </message>
    <message>
        <source>; packs of %1</source>
        <translation>; Packungen zu %1</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>Orders of %1</source>
        <translation>Bestellungen %1</translation>
    </message>
    <message>
        <source>%1, order sheet of %2</source>
        <translation>%1, Bestellliste vom %2</translation>
    </message>
    <message>
        <source>Order sheet</source>
        <translation>Bestellliste</translation>
    </message>
    <message>
        <source>Nothing runs short until %1.</source>
        <translation>Bis %1 wird nichts knapp.</translation>
    </message>
</context>
<context>
    <name>Outlook</name>
    <message>
        <source>%1 will not be asked for %2</source>
        <translation>%1: %2 wird nicht mehr verlangt</translation>
    </message>
    <message>
        <source>%1 will have no %2</source>
        <translation>%1 wird ohne %2 sein</translation>
    </message>
    <message>
        <source>%1 will have %2 of %3: %4</source>
        <translation>%1 wird %2 von %3 haben: %4</translation>
    </message>
    <message>
        <source>%1 will not be on the board</source>
        <translation>%1 wird nicht mehr auf der Tafel stehen</translation>
    </message>
    <message>
        <source>%1 will be %2</source>
        <translation>%1 wird sein: %2</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht verlangt</translation>
    </message>
    <message>
        <source>%1 %2, %3: %4; so far: %5</source>
        <translation>%1 %2, %3: %4; bisher: %5</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1, %2: %3, the first %4</source>
        <translation>%1, %2: %3, zuerst %4</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>%1 will not be ready. %2</source>
        <translation>%1 wird nicht bereit sein. %2</translation>
    </message>
    <message>
        <source>Is it meant so? %1.</source>
        <translation>Ist das so gemeint? %1.</translation>
    </message>
</context>
<context>
    <name>PaperButton</name>
    <message>
        <source>Check list</source>
        <translation>Prüfliste</translation>
    </message>
    <message>
        <source>Wall card</source>
        <translation>Wandkarte</translation>
    </message>
</context>
<context>
    <name>PlanSentences</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>new kit would itself expire within this period: order again</source>
        <translation>neue Ausrüstung liefe selbst in diesem Zeitraum ab: nachbestellen</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>%1 bestellen</translation>
    </message>
    <message>
        <source>enough until %1</source>
        <translation>genug bis %1</translation>
    </message>
    <message>
        <source>late: order now, the day was %1</source>
        <translation>zu spät: jetzt bestellen, der Tag war der %1</translation>
    </message>
    <message>
        <source>order by %1</source>
        <translation>bestellen bis %1</translation>
    </message>
    <message>
        <source>short now</source>
        <translation>schon knapp</translation>
    </message>
    <message>
        <source>short from %1</source>
        <translation>knapp ab %1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 from %2; each kit is enough with a confidence of %3 %.</source>
        <translation>%1 ab %2; jede Ausrüstung reicht mit einer Sicherheit von %3 %.</translation>
    </message>
    <message>
        <source>An order lasts %1 from the day that kit would run short. Order-by days allow for delivery and %2 to spare.</source>
        <translation>Eine Bestellung reicht %1 ab dem Tag, an dem es knapp würde. Die Bestelltage lassen Zeit für die Lieferung und %2 Reserve.</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 Jahre</translation>
    </message>
    <message>
        <source>none ended, %1 here</source>
        <translation>keines ausgeschieden, %1 da</translation>
    </message>
    <message>
        <source>%1 ended (%2 lost, %3 worn out), %4 here</source>
        <translation>%1 ausgeschieden (%2 verloren, %3 verschlissen), %4 da</translation>
    </message>
    <message>
        <source>half last %1</source>
        <translation>die Hälfte hält %1</translation>
    </message>
    <message>
        <source>more than half outlast the record</source>
        <translation>mehr als die Hälfte hält länger, als das Protokoll reicht</translation>
    </message>
    <message>
        <source>goes faster with age; a tenth is gone after %1</source>
        <translation>geht mit dem Alter schneller verloren oder kaputt; ein Zehntel ist nach %1 nicht mehr da</translation>
    </message>
    <message>
        <source>goes mostly when new; a tenth is gone after %1</source>
        <translation>geht vor allem neu verloren oder kaputt; ein Zehntel ist nach %1 nicht mehr da</translation>
    </message>
    <message>
        <source>age makes no difference; a tenth is gone after %1</source>
        <translation>das Alter macht keinen Unterschied; ein Zehntel ist nach %1 nicht mehr da</translation>
    </message>
    <message>
        <source>rule “%1” allows %2</source>
        <translation>die Regel „%1“ erlaubt %2</translation>
    </message>
    <message>
        <source>: nothing here is known to be that old</source>
        <translation>: so alt ist hier nichts bekannt</translation>
    </message>
    <message>
        <source>: none ended before that, and %1 came that far</source>
        <translation>: vorher schied keines aus, so weit kamen %1</translation>
    </message>
    <message>
        <source>: %1 % come that far (%2 to %3 %)</source>
        <translation>: %1 % kommen so weit (%2 bis %3 %)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>hardly likely (&lt; 0.1 %)</source>
        <translation>kaum wahrscheinlich (&lt; 0,1 %)</translation>
    </message>
    <message>
        <source>almost certain (&gt; 99.9 %)</source>
        <translation>fast sicher (&gt; 99,9 %)</translation>
    </message>
    <message>
        <source>short now? %1</source>
        <translation>jetzt knapp? %1</translation>
    </message>
    <message>
        <source>short on %1? %2</source>
        <translation>knapp am %1? %2</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>A forecast is an estimate from the club&apos;s own record. It does not replace looking at the kit, and where a day printed on a thing is earlier, that day holds.</source>
        <translation>Eine Vorhersage ist eine Schätzung aus dem eigenen Protokoll des Vereins. Sie ersetzt nicht, die Ausrüstung anzusehen, und wo ein aufgedruckter Tag früher ist, gilt er.</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>That is a tag&apos;s code. Say it in words.</source>
        <translation>Das ist der Code eines Etiketts. Bitte in Worten sagen.</translation>
    </message>
    <message>
        <source>Say it in words: at least three letters.</source>
        <translation>Bitte in Worten sagen: mindestens drei Buchstaben.</translation>
    </message>
</context>
<context>
    <name>RegisterRows</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>am Körper getragen</translation>
    </message>
    <message>
        <source>each has their own</source>
        <translation>jede Person hat ihr eigenes</translation>
    </message>
    <message>
        <source>price %1</source>
        <translation>Preis %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>höchstens %1 %2</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>mindestens %1 %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 wanted</source>
        <translation>%1 gewünscht</translation>
    </message>
    <message>
        <source>ends on the day stamped on it</source>
        <translation>endet am aufgedruckten Tag</translation>
    </message>
    <message>
        <source>ends %1 after it was made</source>
        <translation>endet %1 nach der Herstellung</translation>
    </message>
    <message>
        <source>ends %1 after its first use</source>
        <translation>endet %1 nach dem ersten Gebrauch</translation>
    </message>
    <message>
        <source>ends with the year %1 after it was made</source>
        <translation>endet mit dem Jahr, das %1 nach der Herstellung liegt</translation>
    </message>
    <message>
        <source>inspect every %1</source>
        <translation>prüfen alle %1</translation>
    </message>
    <message>
        <source>service every %1</source>
        <translation>warten alle %1</translation>
    </message>
    <message>
        <source>look at it every %1 of use</source>
        <translation>ansehen nach je %1 Gebrauch</translation>
    </message>
    <message>
        <source>look at it every %1</source>
        <translation>ansehen nach je %1</translation>
    </message>
    <message>
        <source>look at it after: %1</source>
        <translation>ansehen nach: %1</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>Größe %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>kit type, size, life rule</source>
        <translation>Art, Größe, Regel</translation>
    </message>
    <message>
        <source>what it says</source>
        <translation>was sie sagt</translation>
    </message>
    <message>
        <source>%1, size %2</source>
        <translation>%1, Größe %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1; a remark</source>
        <translation>%1; ein Hinweis</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>home boat</source>
        <translation>Heimatboot</translation>
    </message>
    <message>
        <source>boat</source>
        <translation>Boot</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>boats of one class are asked the same kit</source>
        <translation>von Booten einer Klasse wird dasselbe verlangt</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>kit type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>empty: the whole thing</source>
        <translation>leer: das Ganze</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>wem</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>home place</source>
        <translation>Heimatplatz</translation>
    </message>
    <message>
        <source>lies at</source>
        <translation>liegt an</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>the code printed on it; scan it here</source>
        <translation>der aufgedruckte Code; hier einlesen</translation>
    </message>
    <message>
        <source>importance</source>
        <translation>Wichtigkeit</translation>
    </message>
    <message>
        <source>a higher number is made ready first</source>
        <translation>eine höhere Zahl wird zuerst klargemacht</translation>
    </message>
    <message>
        <source>check every</source>
        <translation>prüfen alle</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>empty: a check holds until something changes</source>
        <translation>leer: eine Prüfung gilt, bis sich etwas ändert</translation>
    </message>
    <message>
        <source>role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Brustumfang</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>here until</source>
        <translation>da bis</translation>
    </message>
    <message>
        <source>worn on the body</source>
        <translation>wird am Körper getragen</translation>
    </message>
    <message>
        <source>each person has their own</source>
        <translation>jeder hat eigenes</translation>
    </message>
    <message>
        <source>delivery takes</source>
        <translation>Lieferzeit</translation>
    </message>
    <message>
        <source>sold in packs of</source>
        <translation>Packung zu</translation>
    </message>
    <message>
        <source>price of one</source>
        <translation>Stückpreis</translation>
    </message>
    <message>
        <source>spares to hold</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>weight from</source>
        <translation>Gewicht von</translation>
    </message>
    <message>
        <source>weight to</source>
        <translation>Gewicht bis</translation>
    </message>
    <message>
        <source>chest from</source>
        <translation>Brust von</translation>
    </message>
    <message>
        <source>chest to</source>
        <translation>Brust bis</translation>
    </message>
    <message>
        <source>wanted for the boats</source>
        <translation>Soll für die Boote</translation>
    </message>
    <message>
        <source>name of the rule</source>
        <translation>Name der Regel</translation>
    </message>
    <message>
        <source>kind of rule</source>
        <translation>Art der Regel</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>otherwise with age</source>
        <translation>mit dem Alter anders</translation>
    </message>
    <message>
        <source>108:12 is “12 from the age of 108 months on”; several with ; between</source>
        <translation>108:12 heißt „12 ab dem Alter von 108 Monaten“; mehrere mit ; dazwischen</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>when overdue</source>
        <translation>wenn überfällig</translation>
    </message>
    <message>
        <source>days&apos; notice</source>
        <translation>Tage vorher</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>the day itself is too late</source>
        <translation>der Tag selbst ist zu spät</translation>
    </message>
    <message>
        <source>without a date</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>where it says so: manual, standard, the club&apos;s own decision</source>
        <translation>wo es steht: Handbuch, Norm, Beschluss des Vereins</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hergestellt</translation>
    </message>
    <message>
        <source>first used</source>
        <translation>erster Gebrauch</translation>
    </message>
    <message>
        <source>expiry stamped on it</source>
        <translation>aufgedrucktes Ablaufdatum</translation>
    </message>
    <message>
        <source>registered</source>
        <translation>aufgenommen</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>GTIN</source>
        <translation>GTIN</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>required</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>may stand in</source>
        <translation>ersatzweise</translation>
    </message>
    <message>
        <source>in which check</source>
        <translation>bei welcher Prüfung</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Prüfpunkt</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>launches</source>
        <translation>Wasserungen</translation>
    </message>
    <message>
        <source>what is the matter</source>
        <translation>was los ist</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>a stop</source>
        <translation>Sperre</translation>
    </message>
    <message>
        <source>a remark</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>ends as stamped</source>
        <translation>endet wie aufgedruckt</translation>
    </message>
    <message>
        <source>ends by age</source>
        <translation>endet nach Alter</translation>
    </message>
    <message>
        <source>ends after first use</source>
        <translation>endet nach erstem Gebrauch</translation>
    </message>
    <message>
        <source>ends with a year</source>
        <translation>endet mit einem Jahr</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>service</source>
        <translation>warten</translation>
    </message>
    <message>
        <source>look at it by hours</source>
        <translation>nach Stunden ansehen</translation>
    </message>
    <message>
        <source>look at it by launches</source>
        <translation>nach Wasserungen ansehen</translation>
    </message>
    <message>
        <source>look at it after an event</source>
        <translation>nach einem Ereignis ansehen</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Besatzung</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>Bootsführer</translation>
    </message>
    <message>
        <source>gear officer</source>
        <translation>Gerätewart</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>einsatzbereit</translation>
    </message>
    <message>
        <source>unserviceable</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>ausgesondert</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>verschlissen</translation>
    </message>
    <message>
        <source>expired</source>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>boats</source>
        <translation>Boote</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>places</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>kit types</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>sizes</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>life rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>none, end of the month, or days such as 14 days</source>
        <translation>keine, Monatsende oder Tage wie 14 Tage</translation>
    </message>
    <message>
        <source>end of the month</source>
        <translation>Monatsende</translation>
    </message>
    <message>
        <source>launch</source>
        <translation>Auslaufen</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückkehr</translation>
    </message>
    <message>
        <source>a look</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>a measure</source>
        <translation>messen</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>nach der Uhr</translation>
    </message>
    <message>
        <source>manifest lines</source>
        <translation>Zeilen der Packlisten</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>service records</source>
        <translation>Prüfnachweise</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>was geschehen ist</translation>
    </message>
    <message>
        <source>hours and launches</source>
        <translation>Stunden und Wasserungen</translation>
    </message>
    <message>
        <source>log entries</source>
        <translation>Logbucheinträge</translation>
    </message>
    <message>
        <source>registered by mistake</source>
        <translation>Fehleintrag</translation>
    </message>
    <message>
        <source>how it is checked</source>
        <translation>wie geprüft wird</translation>
    </message>
</context>
<context>
    <name>RuleDays</name>
    <message>
        <source>does not fall due</source>
        <translation>wird nicht fällig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1: %2 (jetzt %3)</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>The club&apos;s own kit by this rule:</source>
        <translation>Die eigene Ausrüstung nach dieser Regel:</translation>
    </message>
</context>
<context>
    <name>RuleSentence</name>
    <message>
        <source>{kind} on it,</source>
        <translation>{kind} ,</translation>
    </message>
    <message>
        <source>{kind} : {n} after it was made,</source>
        <translation>{kind} : {n} nach der Herstellung,</translation>
    </message>
    <message>
        <source>{kind} : {n} later,</source>
        <translation>{kind} : {n} danach,</translation>
    </message>
    <message>
        <source>{kind} , the one {n} after it was made,</source>
        <translation>{kind} : {n} nach dem der Herstellung,</translation>
    </message>
    <message>
        <source>{kind} every {n} , with age {steps} ,</source>
        <translation>{kind} alle {n} , im Alter {steps} ,</translation>
    </message>
    <message>
        <source>{kind} , every {n} of use, with age {steps} ,</source>
        <translation>{kind} : alle {n} Gebrauch, im Alter {steps} ,</translation>
    </message>
    <message>
        <source>{kind} , every {n} , with age {steps} ,</source>
        <translation>{kind} : alle {n} , im Alter {steps} ,</translation>
    </message>
    <message>
        <source>{kind} : {event} ,</source>
        <translation>{kind} : {event} ,</translation>
    </message>
    <message>
        <source>{kind}</source>
        <translation>{kind}</translation>
    </message>
    <message>
        <source>Rule {rule} for the part {part} :</source>
        <translation>Regel {rule} für das Teil {part} :</translation>
    </message>
    <message>
        <source>{severity} after that day, {lead_days} days&apos; notice, tolerance {tolerance} , {strict} , {undated} where no date is known, source {source}</source>
        <translation>{severity} nach diesem Tag, {lead_days} Tage vorher gemeldet, Toleranz {tolerance} , {strict} , {undated} wo kein Datum bekannt ist, Quelle {source}</translation>
    </message>
    <message>
        <source>{severity} when overdue, {lead_days} days&apos; notice, tolerance {tolerance} , {strict} , {undated} where no date is known, source {source}</source>
        <translation>{severity} wenn überfällig, {lead_days} Tage vorher gemeldet, Toleranz {tolerance} , {strict} , {undated} wo kein Datum bekannt ist, Quelle {source}</translation>
    </message>
</context>
<context>
    <name>ScanWords</name>
    <message>
        <source>Found: %1.</source>
        <translation>Gefunden: %1.</translation>
    </message>
    <message>
        <source>Look: %1. %2</source>
        <translation>Ansehen: %1. %2</translation>
    </message>
    <message>
        <source>%1 is no tag for this check.</source>
        <translation>%1 ist kein Etikett für diese Prüfung.</translation>
    </message>
    <message>
        <source>%1 was seen before; it counts once.</source>
        <translation>%1 war schon gesehen; es zählt einmal.</translation>
    </message>
    <message>
        <source>%1 is not in the register. It does not count.</source>
        <translation>%1 steht nicht im Verzeichnis. Es zählt nicht.</translation>
    </message>
    <message>
        <source>%1 is aboard.</source>
        <translation>%1 ist an Bord.</translation>
    </message>
    <message>
        <source>Nothing to do for that tag here.</source>
        <translation>Dieses Etikett bewirkt hier nichts.</translation>
    </message>
    <message>
        <source>Scan the damaged thing first, then the tag for damage.</source>
        <translation>Erst das beschädigte Teil scannen, dann das Etikett für Schäden.</translation>
    </message>
    <message>
        <source>No timed point is open.</source>
        <translation>Kein Prüfpunkt mit Uhr ist offen.</translation>
    </message>
    <message>
        <source>Show the tag again to sign, or first the tag of who signs.</source>
        <translation>Zum Unterschreiben noch einmal zeigen, oder erst das Etikett der Person, die unterschreibt.</translation>
    </message>
    <message>
        <source>%1 signs. Show the tag for finishing again.</source>
        <translation>%1 unterschreibt. Das Etikett für „fertig“ noch einmal zeigen.</translation>
    </message>
    <message>
        <source>That tag belongs to nobody in this club.</source>
        <translation>Dieses Etikett gehört niemandem in diesem Verein.</translation>
    </message>
    <message>
        <source>Say first who signs and, where kit is incomplete, why.</source>
        <translation>Erst sagen, wer unterschreibt und, wenn Ausrüstung fehlt, warum.</translation>
    </message>
    <message>
        <source>%1 is no longer here, and is not named.</source>
        <translation>%1 ist nicht mehr hier und wird nicht eingetragen.</translation>
    </message>
    <message>
        <source>Recorded for today: %1, of %2.</source>
        <translation>Für heute eingetragen: %1, %2.</translation>
    </message>
    <message>
        <source>Recorded for today already: %1, of %2.</source>
        <translation>Für heute schon eingetragen: %1, %2.</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>1 × %1</source>
        <translation>1 × %1</translation>
    </message>
    <message>
        <source> by %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Kit incomplete</source>
        <translation>Ausrüstung unvollständig</translation>
    </message>
    <message>
        <source>Kit incomplete: %1</source>
        <translation>Ausrüstung unvollständig: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Kit complete</source>
        <translation>Ausrüstung vollständig</translation>
    </message>
    <message>
        <source>out, launch signed%1</source>
        <translation>draußen, Auslaufen unterschrieben%1</translation>
    </message>
    <message>
        <source>not ready; last check signed%1</source>
        <translation>nicht klar; letzte Prüfung unterschrieben%1</translation>
    </message>
    <message>
        <source>not ready</source>
        <translation>nicht klar</translation>
    </message>
    <message>
        <source>No check of this boat has been signed yet: do a launch check.</source>
        <translation>Für dieses Boot ist noch keine Prüfung unterschrieben: eine Auslaufprüfung machen.</translation>
    </message>
    <message>
        <source>A check was begun and not signed: go on with it.</source>
        <translation>Eine Prüfung wurde begonnen und nicht unterschrieben: weitermachen.</translation>
    </message>
    <message>
        <source>The %1 has been marked missing since the last check: find it, or bring another.</source>
        <translation>%1 gilt seit der letzten Prüfung als fehlend: suchen oder ein anderes holen.</translation>
    </message>
    <message>
        <source>The %1 has been withdrawn since the last check: bring another.</source>
        <translation>%1 ist seit der letzten Prüfung gesperrt: ein anderes holen.</translation>
    </message>
    <message>
        <source>The %1 has been seen at %2 since the last check: bring it back.</source>
        <translation>%1 wurde seit der letzten Prüfung bei %2 gesehen: zurückholen.</translation>
    </message>
    <message>
        <source>The %1 has fallen due since the last check: see the due list.</source>
        <translation>%1 ist seit der letzten Prüfung fällig geworden: siehe Fälligkeiten.</translation>
    </message>
    <message>
        <source>A log entry is open: read it, and close it when it is mended.</source>
        <translation>Ein Logbucheintrag ist offen: lesen und erledigen, wenn es behoben ist.</translation>
    </message>
    <message>
        <source>The last check was signed with kit incomplete: do another.</source>
        <translation>Bei der letzten Prüfung war die Ausrüstung unvollständig: noch einmal prüfen.</translation>
    </message>
    <message>
        <source>launched on %1</source>
        <translation>ausgelaufen mit %1</translation>
    </message>
    <message>
        <source>last seen: %1</source>
        <translation>zuletzt gesehen: %1</translation>
    </message>
    <message>
        <source>returned on %1</source>
        <translation>zurück mit %1</translation>
    </message>
    <message>
        <source>not seen when %1 came back</source>
        <translation>nicht gesehen, als %1 zurückkam</translation>
    </message>
    <message>
        <source>marked missing</source>
        <translation>als fehlend vermerkt</translation>
    </message>
    <message>
        <source>marked missing, home %1</source>
        <translation>als fehlend vermerkt, gehört zu %1</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>undated</source>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>jetzt fällig</translation>
    </message>
    <message>
        <source>stocktake</source>
        <translation>Inventur</translation>
    </message>
    <message>
        <source>launch check</source>
        <translation>Auslaufprüfung</translation>
    </message>
    <message>
        <source>return check</source>
        <translation>Rückkehrprüfung</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>einsatzbereit</translation>
    </message>
    <message>
        <source>unserviceable</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>ausgesondert</translation>
    </message>
    <message>
        <source>damaged: shown with the tag for damaged kit</source>
        <translation>beschädigt: mit dem Etikett für Schäden gezeigt</translation>
    </message>
    <message>
        <source>Return check not done</source>
        <translation>Rückkehrprüfung nicht fertig</translation>
    </message>
    <message>
        <source>Everything is back; still to do: %1</source>
        <translation>Alles zurück; noch offen: %1</translation>
    </message>
    <message>
        <source>Not back: %1</source>
        <translation>Nicht zurück: %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Everything is back</source>
        <translation>Alles zurück</translation>
    </message>
    <message>
        <source>kit ready, checked%1</source>
        <translation>ausrüstungsklar, geprüft%1</translation>
    </message>
    <message>
        <source>Last checked %1; this club checks it every %2: do a check.</source>
        <translation>Zuletzt geprüft %1; dieser Verein prüft alle %2: jetzt prüfen.</translation>
    </message>
    <message>
        <source>was due by %1: overdue %2, within the tolerance</source>
        <translation>war bis %1 fällig: %2 überfällig, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>was due by %1: overdue %2</source>
        <translation>war bis %1 fällig: %2 überfällig</translation>
    </message>
    <message>
        <source>due soon, on %1</source>
        <translation>bald fällig, am %1</translation>
    </message>
    <message>
        <source>due on %1</source>
        <translation>fällig am %1</translation>
    </message>
    <message>
        <source>No launch of it is recorded; still to do: %1</source>
        <translation>Keine Auslaufprüfung ist verzeichnet; noch zu tun: %1</translation>
    </message>
    <message>
        <source>No launch of it is recorded, so nothing is missed</source>
        <translation>Keine Auslaufprüfung ist verzeichnet, so fehlt nichts</translation>
    </message>
    <message>
        <source>The last check found an open log entry%1, which has been closed since: do a check.</source>
        <translation>Die letzte Prüfung fand einen offenen Logbucheintrag%1, der seither geschlossen wurde: neu prüfen.</translation>
    </message>
    <message>
        <source> (“%1”)</source>
        <translation> („%1“)</translation>
    </message>
</context>
<context>
    <name>SetUp</name>
    <message>
        <source>Every boat has all that its manifest asks for.</source>
        <translation>Jedes Boot hat alles, was seine Packliste verlangt.</translation>
    </message>
    <message>
        <source>There is no boat yet to fit out.</source>
        <translation>Noch gibt es kein Boot zum Ausrüsten.</translation>
    </message>
    <message>
        <source>No rule is an example any more.</source>
        <translation>Keine Regel ist mehr ein Beispiel.</translation>
    </message>
    <message>
        <source>No kit type has a rule yet: how long it lasts, when it is looked at.</source>
        <translation>Noch hat keine Art eine Regel: wie lange sie hält, wann sie geprüft wird.</translation>
    </message>
    <message>
        <source>boats</source>
        <translation>Boote</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>kit of each boat</source>
        <translation>Ausrüstung jedes Bootes</translation>
    </message>
    <message>
        <source>rules looked at</source>
        <translation>Regeln durchgesehen</translation>
    </message>
    <message>
        <source>tags printed</source>
        <translation>Etiketten gedruckt</translation>
    </message>
    <message>
        <source>first check signed</source>
        <translation>erste Prüfung unterschrieben</translation>
    </message>
    <message>
        <source>There is no boat yet. Its class says which list it follows.</source>
        <translation>Noch gibt es kein Boot. Seine Klasse sagt, welcher Packliste es folgt.</translation>
    </message>
    <message>
        <source>Nobody is there yet who drives, crews or signs.</source>
        <translation>Noch gibt es niemanden, der fährt, mitfährt oder unterschreibt.</translation>
    </message>
    <message>
        <source>Tags were printed.</source>
        <translation>Etiketten wurden gedruckt.</translation>
    </message>
    <message>
        <source>Each thing needs its tag fixed to it before a check can see it.</source>
        <translation>An jedem Stück muss sein Etikett sein, bevor eine Prüfung es sieht.</translation>
    </message>
    <message>
        <source>A check was signed.</source>
        <translation>Eine Prüfung wurde unterschrieben.</translation>
    </message>
    <message>
        <source>Press a boat&apos;s strip, show its tags, and sign.</source>
        <translation>Den Streifen eines Bootes drücken, die Etiketten zeigen, unterschreiben.</translation>
    </message>
    <message>
        <source>Write the boats</source>
        <translation>Boote eintragen</translation>
    </message>
    <message>
        <source>Write the people</source>
        <translation>Leute eintragen</translation>
    </message>
    <message>
        <source>Fit out a boat</source>
        <translation>Boot ausrüsten</translation>
    </message>
    <message>
        <source>Look at the rules</source>
        <translation>Regeln ansehen</translation>
    </message>
    <message>
        <source>Print the tags</source>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Go to the boats</source>
        <translation>Zu den Booten</translation>
    </message>
    <message>
        <source>All of it is done.</source>
        <translation>Alles ist erledigt.</translation>
    </message>
    <message>
        <source>%1 of %2 are done. Still to do: %3.</source>
        <translation>%1 von %2 erledigt. Noch zu tun: %3.</translation>
    </message>
    <message>
        <source>Not all that is asked of it: %1.</source>
        <translation>Nicht alles Verlangte: %1.</translation>
    </message>
    <message>
        <source>Nothing is asked of %1, without a class or a list of its own.</source>
        <translation>Von %1 wird nichts verlangt: ohne Klasse und ohne eigene Packliste.</translation>
    </message>
    <message>
        <source>Nothing is asked of %1: the class “%2” has no list.</source>
        <translation>Von %1 wird nichts verlangt: Die Klasse „%2“ hat keine Packliste.</translation>
    </message>
    <message>
        <source>“%1”, the class of %2, has no list and is almost “%3”: if they are one, write them alike.</source>
        <translation>„%1“, die Klasse von %2, hat keine Packliste und heißt fast wie „%3“: wenn es eine ist, beide gleich schreiben.</translation>
    </message>
</context>
<context>
    <name>ShortReason</name>
    <message>
        <source>Take it out, bring another.</source>
        <translation>Herausnehmen, anderes holen.</translation>
    </message>
    <message>
        <source>Have it seen to.</source>
        <translation>Darum kümmern.</translation>
    </message>
    <message>
        <source>%1 is due. %2</source>
        <translation>%1 ist fällig. %2</translation>
    </message>
    <message>
        <source>%1 was due on %2. %3</source>
        <translation>%1 war am %2 fällig. %3</translation>
    </message>
    <message>
        <source>Out of date. %1</source>
        <translation>Abgelaufen. %1</translation>
    </message>
    <message>
        <source>Out of date since %1. %2</source>
        <translation>Abgelaufen seit %1. %2</translation>
    </message>
    <message>
        <source>No date known for %1. %2</source>
        <translation>Kein Datum bekannt für %1. %2</translation>
    </message>
    <message>
        <source>due %1: %2</source>
        <translation>fällig %1: %2</translation>
    </message>
    <message>
        <source>Withdrawn, not fit for use. Take it out, bring another.</source>
        <translation>Gesperrt, nicht benutzen. Herausnehmen, anderes holen.</translation>
    </message>
    <message>
        <source>Written off. Take it out of the boat.</source>
        <translation>Ausgesondert. Aus dem Boot nehmen.</translation>
    </message>
    <message>
        <source>Size %1 fits nobody aboard.</source>
        <translation>Größe %1 passt niemandem an Bord.</translation>
    </message>
    <message>
        <source>Not for anyone aboard.</source>
        <translation>Für niemanden an Bord.</translation>
    </message>
    <message>
        <source>Belongs to %1, who is not aboard.</source>
        <translation>Gehört %1, nicht an Bord.</translation>
    </message>
    <message>
        <source>From %1. It counts here; bring it back after.</source>
        <translation>Von %1. Zählt hier; danach zurückbringen.</translation>
    </message>
    <message>
        <source>Was missing, and is found.</source>
        <translation>Hat gefehlt und ist gefunden.</translation>
    </message>
    <message>
        <source>More than this boat&apos;s list asks for.</source>
        <translation>Mehr, als die Packliste dieses Boots verlangt.</translation>
    </message>
    <message>
        <source>Went out on %1.</source>
        <translation>Lief mit %1 aus.</translation>
    </message>
    <message>
        <source>Not in the register. It does not count.</source>
        <translation>Nicht im Verzeichnis. Zählt nicht.</translation>
    </message>
    <message>
        <source>Log: %1</source>
        <translation>Logbuch: %1</translation>
    </message>
</context>
<context>
    <name>Spreadsheet</name>
    <message>
        <source>Lines of boats&apos; lists</source>
        <translation>Zeilen von Packlisten</translation>
    </message>
    <message>
        <source>Points of checks</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>Services</source>
        <translation>Wartungen</translation>
    </message>
    <message>
        <source>Happenings</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Hours and launches</source>
        <translation>Stunden und Wasserungen</translation>
    </message>
    <message>
        <source>Entries of the log</source>
        <translation>Einträge im Logbuch</translation>
    </message>
    <message>
        <source>a place</source>
        <translation>ein Platz</translation>
    </message>
    <message>
        <source>a kit type</source>
        <translation>eine Art Ausrüstung</translation>
    </message>
    <message>
        <source>a size of a kit type</source>
        <translation>eine Größe einer Art</translation>
    </message>
    <message>
        <source>a rule of a kit type</source>
        <translation>eine Regel einer Art</translation>
    </message>
    <message>
        <source>a boat</source>
        <translation>ein Boot</translation>
    </message>
    <message>
        <source>a line of a boat&apos;s list</source>
        <translation>eine Zeile einer Packliste</translation>
    </message>
    <message>
        <source>a point of a check</source>
        <translation>ein Prüfpunkt</translation>
    </message>
    <message>
        <source>a person</source>
        <translation>eine Person</translation>
    </message>
    <message>
        <source>a piece of kit</source>
        <translation>ein Stück Ausrüstung</translation>
    </message>
    <message>
        <source>a part of a thing</source>
        <translation>ein Teil eines Stücks</translation>
    </message>
    <message>
        <source>a service that was done</source>
        <translation>eine erledigte Wartung</translation>
    </message>
    <message>
        <source>something that happened to a thing</source>
        <translation>ein Ereignis an einem Stück</translation>
    </message>
    <message>
        <source>hours or launches of a thing</source>
        <translation>Stunden oder Wasserungen eines Stücks</translation>
    </message>
    <message>
        <source>an entry of the log</source>
        <translation>ein Eintrag im Logbuch</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>boat or place</source>
        <translation>Boot oder Platz</translation>
    </message>
    <message>
        <source>how many of it</source>
        <translation>wie viele davon</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 neu</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 geändert</translation>
    </message>
    <message>
        <source>%1 as they are</source>
        <translation>%1 wie bisher</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>the club has no %1 “%2”: correct it, or tick “%3” so that it is made</source>
        <translation>der Verein hat „%2“ nicht (%1): berichtigen oder „%3“ ankreuzen, damit es angelegt wird</translation>
    </message>
    <message>
        <source>no boat and no place is called “%1”: correct it, register the boat first, or tick “%2” so that it is made as a place</source>
        <translation>kein Boot und kein Platz heißt „%1“: berichtigen, das Boot zuerst eintragen oder „%2“ ankreuzen, damit es als Platz angelegt wird</translation>
    </message>
    <message>
        <source>Days such as %1 may be two: say above which comes first, the day or the month.</source>
        <translation>Tage wie %1 sind zweideutig: oben angeben, was zuerst steht, Tag oder Monat.</translation>
    </message>
    <message>
        <source>No heading is known yet: say above each column what it means.</source>
        <translation>Noch ist keine Überschrift bekannt: über jeder Spalte angeben, was sie bedeutet.</translation>
    </message>
    <message>
        <source>Say above which column is this: %1.</source>
        <translation>Oben angeben, welche Spalte das ist: %1.</translation>
    </message>
    <message>
        <source>serial of the thing</source>
        <translation>Seriennummer des Stücks</translation>
    </message>
    <message>
        <source>“%1” → %2, %3</source>
        <translation>„%1“ → %2, %3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Your words: %1.</source>
        <translation>Eigene Wörter: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>and %1 more, each in its row above</source>
        <translation>und %1 weitere, jede oben in ihrer Zeile</translation>
    </message>
</context>
<context>
    <name>StarterWords</name>
    <message>
        <source>an inflatable rescue boat with two aboard</source>
        <translation>ein Schlauchboot zur Rettung mit zweien an Bord</translation>
    </message>
    <message>
        <source>a rowing or paddled rescue boat</source>
        <translation>ein gerudertes oder gepaddeltes Rettungsboot</translation>
    </message>
    <message>
        <source>a launch with cabin and engine</source>
        <translation>eine Barkasse mit Kajüte und Motor</translation>
    </message>
    <message>
        <source>Rescue tube, paddles, tow line, knife, whistles, life jackets and radio, and the points of its hull, chambers and engine.</source>
        <translation>Rettungsboje, Paddel, Schleppleine, Messer, Pfeifen, Rettungswesten und Funkgerät, dazu die Prüfpunkte für Rumpf, Kammern und Motor.</translation>
    </message>
    <message>
        <source>Oars, rescue tube, lines, knife, whistles, life jackets, radio, bailer and first-aid kit, and the points of its hull.</source>
        <translation>Riemen, Rettungsboje, Leinen, Messer, Pfeifen, Rettungswesten, Funkgerät, Ösfass und Verbandstasche, dazu die Prüfpunkte für den Rumpf.</translation>
    </message>
    <message>
        <source>Lifebuoy, lines, anchor, flares, extinguisher, life jackets, radio and more, and the points of its hull, cabin and engine.</source>
        <translation>Rettungsring, Leinen, Anker, Seenotsignale, Feuerlöscher, Rettungswesten, Funkgerät und mehr, dazu die Prüfpunkte für Rumpf, Kajüte und Motor.</translation>
    </message>
</context>
<context>
    <name>Stocktake</name>
    <message>
        <source>unknown tag</source>
        <translation>unbekanntes Etikett</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>It has no home in the register: give it one.</source>
        <translation>Es hat keinen Platz im Verzeichnis: ihm einen geben.</translation>
    </message>
    <message>
        <source>Its home is %1: carry it there, or give it its home here.</source>
        <translation>Sein Platz ist %1: dorthin bringen oder ihm hier einen Platz geben.</translation>
    </message>
    <message>
        <source>still to find</source>
        <translation>noch zu finden</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>look at this</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>%1 still to find</source>
        <translation>%1 noch zu finden</translation>
    </message>
    <message>
        <source>all found that should be there</source>
        <translation>alles gefunden, was da sein soll</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1 gefunden</translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation>%1 zum Hinsehen</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>TagChoice</name>
    <message>
        <source>boats</source>
        <translation>Boote</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>to print</source>
        <translation>zu drucken</translation>
    </message>
    <message>
        <source>places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>wearing out: %1 of 4</source>
        <translation>nutzt sich ab: %1 von 4</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
</context>
<context>
    <name>TagDelivery</name>
    <message>
        <source>tags.pdf</source>
        <translation>etiketten.pdf</translation>
    </message>
    <message>
        <source>Saved: %1, %2. Print it at 100 %, and measure the bar on it.</source>
        <translation>Gespeichert: %1, %2. Mit 100 % drucken und den Balken darauf nachmessen.</translation>
    </message>
</context>
<context>
    <name>TagSheet</name>
    <message>
        <source>Print at 100 %: this bar is 50 mm long.  Sheet %1 of %2</source>
        <translation>Mit 100 % drucken: Dieser Balken ist 50 mm lang.  Blatt %1 von %2</translation>
    </message>
    <message>
        <source>A webcam reads these from up to %1 m (720p) or %2 m (1080p) in good light.</source>
        <translation>Eine Webcam liest diese aus bis zu %1 m (720p) oder %2 m (1080p) bei gutem Licht.</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>finish: sign</source>
        <translation>fertig: unterschreiben</translation>
    </message>
    <message>
        <source>next boat</source>
        <translation>nächstes Boot</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>zurücknehmen</translation>
    </message>
    <message>
        <source>damaged: the thing just seen</source>
        <translation>beschädigt: das zuletzt gesehene Teil</translation>
    </message>
    <message>
        <source>start or stop the clock</source>
        <translation>Uhr starten oder anhalten</translation>
    </message>
    <message>
        <source>save and put aside</source>
        <translation>sichern und weglegen</translation>
    </message>
</context>
<context>
    <name>Trip</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>ausgelaufen %1</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>zurück %1</translation>
    </message>
    <message>
        <source>aboard: %1</source>
        <translation>an Bord: %1</translation>
    </message>
    <message>
        <source>engine %1 h</source>
        <translation>Motor %1 h</translation>
    </message>
    <message>
        <source>launched %1 times</source>
        <translation>%1-mal zu Wasser</translation>
    </message>
    <message>
        <source>fuel: %1</source>
        <translation>Kraftstoff: %1</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n point open</source>
        <translation>
            <numerusform>%n Prüfpunkt offen</numerusform>
            <numerusform>%n Prüfpunkte offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n points open</source>
        <translation>
            <numerusform>%n Prüfpunkt offen</numerusform>
            <numerusform>%n Prüfpunkte offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point out of range</source>
        <translation>
            <numerusform>%n Prüfpunkt außerhalb</numerusform>
            <numerusform>%n Prüfpunkte außerhalb</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n points out of range</source>
        <translation>
            <numerusform>%n Prüfpunkt außerhalb</numerusform>
            <numerusform>%n Prüfpunkte außerhalb</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entry open</source>
        <translation>
            <numerusform>%n Logbucheintrag offen</numerusform>
            <numerusform>%n Logbucheinträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entries open</source>
        <translation>
            <numerusform>%n Logbucheintrag offen</numerusform>
            <numerusform>%n Logbucheinträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Kit complete, with %n remark</source>
        <translation>
            <numerusform>Ausrüstung vollständig, %n Hinweis</numerusform>
            <numerusform>Ausrüstung vollständig, %n Hinweise</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Kit complete, with %n remarks</source>
        <translation>
            <numerusform>Ausrüstung vollständig, %n Hinweis</numerusform>
            <numerusform>Ausrüstung vollständig, %n Hinweise</numerusform>
        </translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <extracomment>a day: %1 day of the month, %2 month, %3 year</extracomment>
        <translation>%1. %2 %3</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>%1 yesterday</source>
        <translation>gestern %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>the end of a list: everything but the last, and the last</extracomment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%n item missing</source>
        <translation>
            <numerusform>%n Teil fehlt</numerusform>
            <numerusform>%n Teile fehlen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items missing</source>
        <translation>
            <numerusform>%n Teil fehlt</numerusform>
            <numerusform>%n Teile fehlen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open entry</source>
        <translation>
            <numerusform>%n offener Eintrag</numerusform>
            <numerusform>%n offene Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open entries</source>
        <translation>
            <numerusform>%n offener Eintrag</numerusform>
            <numerusform>%n offene Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Everything is back, with %n remark</source>
        <translation>
            <numerusform>Alles zurück, %n Hinweis</numerusform>
            <numerusform>Alles zurück, %n Hinweise</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Everything is back, with %n remarks</source>
        <translation>
            <numerusform>Alles zurück, %n Hinweis</numerusform>
            <numerusform>Alles zurück, %n Hinweise</numerusform>
        </translation>
    </message>
    <message>
        <source>.</source>
        <extracomment>the mark between whole and part of a number</extracomment>
        <translation>,</translation>
    </message>
    <message numerus="yes">
        <source>Imported: %n row.</source>
        <translation>
            <numerusform>Eingelesen: %n Zeile.</numerusform>
            <numerusform>Eingelesen: %n Zeilen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Imported: %n rows.</source>
        <translation>
            <numerusform>Eingelesen: %n Zeile.</numerusform>
            <numerusform>Eingelesen: %n Zeilen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n month</source>
        <translation>
            <numerusform>%n Monat</numerusform>
            <numerusform>%n Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n months</source>
        <translation>
            <numerusform>%n Monat</numerusform>
            <numerusform>%n Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n order without a price</source>
        <translation>
            <numerusform>%n Bestellung ohne Preis</numerusform>
            <numerusform>%n Bestellungen ohne Preis</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders without a price</source>
        <translation>
            <numerusform>%n Bestellung ohne Preis</numerusform>
            <numerusform>%n Bestellungen ohne Preis</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n recorded as passed</source>
        <translation>
            <numerusform>%n als bestanden eingetragen</numerusform>
            <numerusform>%n als bestanden eingetragen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n falls due in 24 months.</source>
        <translation>
            <numerusform>%n Termin wird in 24 Monaten fällig.</numerusform>
            <numerusform>%n Termine werden in 24 Monaten fällig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fall due in 24 months.</source>
        <translation>
            <numerusform>%n Termin wird in 24 Monaten fällig.</numerusform>
            <numerusform>%n Termine werden in 24 Monaten fällig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Register %n item</source>
        <translation>
            <numerusform>%n Stück aufnehmen</numerusform>
            <numerusform>%n Stück aufnehmen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Register %n items</source>
        <translation>
            <numerusform>%n Stück aufnehmen</numerusform>
            <numerusform>%n Stück aufnehmen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item registered. Print its tag and fix it before the item goes to a boat.</source>
        <translation>
            <numerusform>%n Stück aufgenommen. Sein Etikett drucken und anbringen, bevor es in ein Boot kommt.</numerusform>
            <numerusform>%n Stück aufgenommen. Ihre Etiketten drucken und anbringen, bevor sie in ein Boot kommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items registered. Print their tags and fix them before the kit goes to a boat.</source>
        <translation>
            <numerusform>%n Stück aufgenommen. Sein Etikett drucken und anbringen, bevor es in ein Boot kommt.</numerusform>
            <numerusform>%n Stück aufgenommen. Ihre Etiketten drucken und anbringen, bevor sie in ein Boot kommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet</source>
        <translation>
            <numerusform>%n Blatt</numerusform>
            <numerusform>%n Blätter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheets</source>
        <translation>
            <numerusform>%n Blatt</numerusform>
            <numerusform>%n Blätter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry open</source>
        <translation>
            <numerusform>%n Eintrag offen</numerusform>
            <numerusform>%n Einträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries open</source>
        <translation>
            <numerusform>%n Eintrag offen</numerusform>
            <numerusform>%n Einträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boat</source>
        <translation>
            <numerusform>%n Boot</numerusform>
            <numerusform>%n Boote</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boats</source>
        <translation>
            <numerusform>%n Boot</numerusform>
            <numerusform>%n Boote</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n move</source>
        <translation>
            <numerusform>%n Gang</numerusform>
            <numerusform>%n Gängen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n moves</source>
        <translation>
            <numerusform>%n Gang</numerusform>
            <numerusform>%n Gängen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sound item is left out: nobody knows where it is.</source>
        <translation>
            <numerusform>%n unversehrtes Stück bleibt außen vor: Niemand weiß, wo es ist.</numerusform>
            <numerusform>%n unversehrte Stücke bleiben außen vor: Niemand weiß, wo sie sind.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sound items are left out: nobody knows where they are.</source>
        <translation>
            <numerusform>%n unversehrtes Stück bleibt außen vor: Niemand weiß, wo es ist.</numerusform>
            <numerusform>%n unversehrte Stücke bleiben außen vor: Niemand weiß, wo sie sind.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line of the record</source>
        <translation>
            <numerusform>%n Zeile des Protokolls</numerusform>
            <numerusform>%n Zeilen des Protokolls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines of the record</source>
        <translation>
            <numerusform>%n Zeile des Protokolls</numerusform>
            <numerusform>%n Zeilen des Protokolls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n machine</source>
        <translation>
            <numerusform>%n Gerät</numerusform>
            <numerusform>%n Geräten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n machines</source>
        <translation>
            <numerusform>%n Gerät</numerusform>
            <numerusform>%n Geräten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place</source>
        <translation>
            <numerusform>%n Stelle</numerusform>
            <numerusform>%n Stellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n Stelle</numerusform>
            <numerusform>%n Stellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item registered, with a tag of its own.</source>
        <translation>
            <numerusform>%n Stück aufgenommen, mit eigenem Etikett.</numerusform>
            <numerusform>%n Stück aufgenommen, jedes mit eigenem Etikett.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items registered, each with a tag of its own.</source>
        <translation>
            <numerusform>%n Stück aufgenommen, mit eigenem Etikett.</numerusform>
            <numerusform>%n Stück aufgenommen, jedes mit eigenem Etikett.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n kind of kit runs short</source>
        <translation>
            <numerusform>%n Art Ausrüstung wird knapp</numerusform>
            <numerusform>%n Arten Ausrüstung werden knapp</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n kinds of kit run short</source>
        <translation>
            <numerusform>%n Art Ausrüstung wird knapp</numerusform>
            <numerusform>%n Arten Ausrüstung werden knapp</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n order is late</source>
        <translation>
            <numerusform>%n Bestellung ist zu spät</numerusform>
            <numerusform>%n Bestellungen sind zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders are late</source>
        <translation>
            <numerusform>%n Bestellung ist zu spät</numerusform>
            <numerusform>%n Bestellungen sind zu spät</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tag</source>
        <translation>
            <numerusform>%n Etikett</numerusform>
            <numerusform>%n Etiketten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tags</source>
        <translation>
            <numerusform>%n Etikett</numerusform>
            <numerusform>%n Etiketten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point</source>
        <translation>
            <numerusform>%n Prüfpunkt</numerusform>
            <numerusform>%n Prüfpunkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <translation>
            <numerusform>%n Prüfpunkt</numerusform>
            <numerusform>%n Prüfpunkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check was signed by it</source>
        <translation>
            <numerusform>%n Prüfung wurde danach unterschrieben</numerusform>
            <numerusform>%n Prüfungen wurden danach unterschrieben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n checks were signed by it</source>
        <translation>
            <numerusform>%n Prüfung wurde danach unterschrieben</numerusform>
            <numerusform>%n Prüfungen wurden danach unterschrieben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message numerus="yes">
        <source>%n day ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date overdue or due within 30 days</source>
        <translation>
            <numerusform>%n Termin überschritten oder in 30 Tagen fällig</numerusform>
            <numerusform>%n Termine überschritten oder in 30 Tagen fällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dates overdue or due within 30 days</source>
        <translation>
            <numerusform>%n Termin überschritten oder in 30 Tagen fällig</numerusform>
            <numerusform>%n Termine überschritten oder in 30 Tagen fällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n is overdue or undated.</source>
        <translation>
            <numerusform>%n ist überschritten oder ohne Datum.</numerusform>
            <numerusform>%n sind überschritten oder ohne Datum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are overdue or undated.</source>
        <translation>
            <numerusform>%n ist überschritten oder ohne Datum.</numerusform>
            <numerusform>%n sind überschritten oder ohne Datum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>within %n day</source>
        <translation>
            <numerusform>innerhalb von %n Tag</numerusform>
            <numerusform>innerhalb von %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>within %n days</source>
        <translation>
            <numerusform>innerhalb von %n Tag</numerusform>
            <numerusform>innerhalb von %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n due day</source>
        <translation>
            <numerusform>%n Fälligkeit</numerusform>
            <numerusform>%n Fälligkeiten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n due days</source>
        <translation>
            <numerusform>%n Fälligkeit</numerusform>
            <numerusform>%n Fälligkeiten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rule is still an example: put your maker&apos;s and your club&apos;s in its place.</source>
        <translation>
            <numerusform>%n Regel ist noch ein Beispiel: durch Angaben des Herstellers und des Vereins ersetzen.</numerusform>
            <numerusform>%n Regel ist noch ein Beispiel: durch Angaben des Herstellers und des Vereins ersetzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rules are still examples: put your makers&apos; and your club&apos;s in their place.</source>
        <translation>
            <numerusform>%n Regeln sind noch Beispiele: durch Angaben der Hersteller und des Vereins ersetzen.</numerusform>
            <numerusform>%n Regeln sind noch Beispiele: durch Angaben der Hersteller und des Vereins ersetzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boat is in the register.</source>
        <translation>
            <numerusform>%n Boot steht im Verzeichnis.</numerusform>
            <numerusform>%n Boot steht im Verzeichnis.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boats are in the register.</source>
        <translation>
            <numerusform>%n Boote stehen im Verzeichnis.</numerusform>
            <numerusform>%n Boote stehen im Verzeichnis.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n person is in the register.</source>
        <translation>
            <numerusform>%n Person steht im Verzeichnis.</numerusform>
            <numerusform>%n Person steht im Verzeichnis.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n people are in the register.</source>
        <translation>
            <numerusform>%n Leute stehen im Verzeichnis.</numerusform>
            <numerusform>%n Leute stehen im Verzeichnis.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row is refused, so nothing is imported yet.</source>
        <translation>
            <numerusform>%n Zeile ist abgelehnt, darum wird noch nichts eingelesen.</numerusform>
            <numerusform>%n Zeile ist abgelehnt, darum wird noch nichts eingelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows are refused, so nothing is imported yet.</source>
        <translation>
            <numerusform>%n Zeilen sind abgelehnt, darum wird noch nichts eingelesen.</numerusform>
            <numerusform>%n Zeilen sind abgelehnt, darum wird noch nichts eingelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fact</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n facts</source>
        <translation>
            <numerusform>%n Zeilen</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check</source>
        <translation>
            <numerusform>%n Prüfung</numerusform>
            <numerusform>%n Prüfung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n checks</source>
        <translation>
            <numerusform>%n Prüfungen</numerusform>
            <numerusform>%n Prüfungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sighting</source>
        <translation>
            <numerusform>%n Sichtung</numerusform>
            <numerusform>%n Sichtung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sightings</source>
        <translation>
            <numerusform>%n Sichtungen</numerusform>
            <numerusform>%n Sichtungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change of the register</source>
        <translation>
            <numerusform>%n Änderung des Verzeichnisses</numerusform>
            <numerusform>%n Änderung des Verzeichnisses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changes of the register</source>
        <translation>
            <numerusform>%n Änderungen des Verzeichnisses</numerusform>
            <numerusform>%n Änderungen des Verzeichnisses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out that stands here already</source>
        <translation>
            <numerusform>%n ausgelassen, das hier schon steht</numerusform>
            <numerusform>%n ausgelassen, das hier schon steht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out that stand here already</source>
        <translation>
            <numerusform>%n ausgelassen, die hier schon stehen</numerusform>
            <numerusform>%n ausgelassen, die hier schon stehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing with another day</source>
        <translation>
            <numerusform>%n Stück mit anderer Frist</numerusform>
            <numerusform>%n Stück mit anderer Frist</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things with another day</source>
        <translation>
            <numerusform>%n Stück mit anderer Frist</numerusform>
            <numerusform>%n Stück mit anderer Frist</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>a month: %1 month, %2 year</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>Move %n item</source>
        <translation>
            <numerusform>%n Stück verlegen</numerusform>
            <numerusform>%n Stück verlegen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n items</source>
        <translation>
            <numerusform>%n Stück verlegen</numerusform>
            <numerusform>%n Stück verlegen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Give %n item</source>
        <translation>
            <numerusform>%n Stück übergeben</numerusform>
            <numerusform>%n Stück übergeben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Give %n items</source>
        <translation>
            <numerusform>%n Stück übergeben</numerusform>
            <numerusform>%n Stück übergeben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set the size of %n item</source>
        <translation>
            <numerusform>Größe von %n Stück setzen</numerusform>
            <numerusform>Größe von %n Stück setzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set the size of %n items</source>
        <translation>
            <numerusform>Größe von %n Stück setzen</numerusform>
            <numerusform>Größe von %n Stück setzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Yes, write off %n item</source>
        <translation>
            <numerusform>Ja, %n Stück aussondern</numerusform>
            <numerusform>Ja, %n Stück aussondern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Yes, write off %n items</source>
        <translation>
            <numerusform>Ja, %n Stück aussondern</numerusform>
            <numerusform>Ja, %n Stück aussondern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Write off %n item</source>
        <translation>
            <numerusform>%n Stück aussondern</numerusform>
            <numerusform>%n Stück aussondern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Write off %n items</source>
        <translation>
            <numerusform>%n Stück aussondern</numerusform>
            <numerusform>%n Stück aussondern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Save the tag of %n item</source>
        <translation>
            <numerusform>Etikett von %n Stück speichern</numerusform>
            <numerusform>Etikett von %n Stück speichern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Save the tags of %n items</source>
        <translation>
            <numerusform>Etiketten von %n Stück speichern</numerusform>
            <numerusform>Etiketten von %n Stück speichern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item is changed.</source>
        <translation>
            <numerusform>%n Stück ist geändert.</numerusform>
            <numerusform>%n Stück ist geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items are changed.</source>
        <translation>
            <numerusform>%n Stück sind geändert.</numerusform>
            <numerusform>%n Stück sind geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>▲ %n thing to look at</source>
        <translation>
            <numerusform>▲ %n Sache zum Hinsehen</numerusform>
            <numerusform>▲ %n Sachen zum Hinsehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>▲ %n things to look at</source>
        <translation>
            <numerusform>▲ %n Sache zum Hinsehen</numerusform>
            <numerusform>▲ %n Sachen zum Hinsehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fact that is recorded here would go there.</source>
        <translation>
            <numerusform>%n Zeile, die hier steht, ginge dorthin.</numerusform>
            <numerusform>%n Zeilen, die hier stehen, gingen dorthin.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n facts that are recorded here would go there.</source>
        <translation>
            <numerusform>%n Zeile, die hier steht, ginge dorthin.</numerusform>
            <numerusform>%n Zeilen, die hier stehen, gingen dorthin.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n second</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>▼ %n more line below</source>
        <translation>
            <numerusform>▼ %n weitere Zeile darunter</numerusform>
            <numerusform>▼ %n weitere Zeilen darunter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>▼ %n more lines below</source>
        <translation>
            <numerusform>▼ %n weitere Zeile darunter</numerusform>
            <numerusform>▼ %n weitere Zeilen darunter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n row</source>
        <translation>
            <numerusform>in %n Zeile</numerusform>
            <numerusform>in %n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n rows</source>
        <translation>
            <numerusform>in %n Zeile</numerusform>
            <numerusform>in %n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fact of the district waits until no check is being done here.</source>
        <translation>
            <numerusform>%n Zeile vom Bezirk wartet, bis hier keine Prüfung mehr läuft.</numerusform>
            <numerusform>%n Zeilen vom Bezirk warten, bis hier keine Prüfung mehr läuft.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n facts of the district wait until no check is being done here.</source>
        <translation>
            <numerusform>%n Zeile vom Bezirk wartet, bis hier keine Prüfung mehr läuft.</numerusform>
            <numerusform>%n Zeilen vom Bezirk warten, bis hier keine Prüfung mehr läuft.</numerusform>
        </translation>
    </message>
    <message>
        <source>its tag is wearing out: print a new one</source>
        <translation>das Etikett nutzt sich ab: ein neues drucken</translation>
    </message>
</context>
<context>
    <name>WrittenCell</name>
    <message>
        <source>is %1</source>
        <translation>ist %1</translation>
    </message>
</context>
<context>
    <name>app::ArrivalPanel</name>
    <message>
        <source>Register it</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>like 2026-03</source>
        <translation>wie 2026-03</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>put at</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hergestellt</translation>
    </message>
    <message>
        <source>printed expiry</source>
        <translation>aufgedruckter Ablauf</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Neu: %1</translation>
    </message>
    <message>
        <source>New: %1, size %2</source>
        <translation>Neu: %1, Größe %2</translation>
    </message>
    <message>
        <source>no place yet</source>
        <translation>noch kein Platz</translation>
    </message>
    <message>
        <source>Save its tags as PDF…</source>
        <translation>Etiketten als PDF speichern…</translation>
    </message>
</context>
<context>
    <name>app::BenchPage</name>
    <message>
        <source>Take back the last</source>
        <translation>Letzten zurücknehmen</translation>
    </message>
    <message>
        <source>kit shown at the bench; a press makes it failed, or passed again</source>
        <translation>an der Werkbank gezeigte Ausrüstung; ein Druck macht sie nicht bestanden oder wieder bestanden</translation>
    </message>
    <message>
        <source>A scan shows that the tag was here, not that the thing works: inspect and test each one by its maker&apos;s manual before it is recorded.</source>
        <translation>Ein Scan zeigt, dass das Etikett hier war, nicht, dass das Teil funktioniert: Jedes Stück nach der Anleitung des Herstellers prüfen, bevor es eingetragen wird.</translation>
    </message>
    <message>
        <source>2026-03-14</source>
        <translation>2026-03-14</translation>
    </message>
    <message>
        <source>a word for the record</source>
        <translation>fürs Protokoll</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>which rule?</source>
        <translation>welche Regel?</translation>
    </message>
    <message>
        <source>who did it?</source>
        <translation>wer war es?</translation>
    </message>
    <message>
        <source>%1 is in the list already; it counts once.</source>
        <translation>%1 steht schon in der Liste; es zählt einmal.</translation>
    </message>
    <message>
        <source>%1 is not this club&apos;s kit.</source>
        <translation>%1 ist keine Ausrüstung dieses Vereins.</translation>
    </message>
    <message>
        <source>In the list: %1.</source>
        <translation>In der Liste: %1.</translation>
    </message>
    <message>
        <source>Show the kit to the camera, tag after tag, or type its codes. A press on a line makes it failed.</source>
        <translation>Die Ausrüstung der Kamera zeigen, Etikett für Etikett, oder die Codes tippen. Ein Druck auf eine Zeile heißt: nicht bestanden.</translation>
    </message>
    <message>
        <source>%1 passed, %2 failed. A press on a line changes that.</source>
        <translation>%1 bestanden, %2 nicht bestanden. Ein Druck auf eine Zeile ändert das.</translation>
    </message>
    <message>
        <source>Record %1 passed, %2 failed</source>
        <translation>%1 bestanden, %2 nicht bestanden eintragen</translation>
    </message>
    <message>
        <source>Record %1 as passed</source>
        <translation>%1 als bestanden eintragen</translation>
    </message>
    <message>
        <source>“%1” is no day: write it like 2026-03-14.</source>
        <translation>„%1“ ist kein Tag: so schreiben wie 2026-03-14.</translation>
    </message>
    <message>
        <source>Recorded. The next tag begins a new round.</source>
        <translation>Eingetragen. Das nächste Etikett beginnt eine neue Runde.</translation>
    </message>
</context>
<context>
    <name>app::BesideOrOver</name>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
</context>
<context>
    <name>app::BoatStrip</name>
    <message>
        <source>%1: %2. Opens: %3</source>
        <translation>%1: %2. Öffnet: %3</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Ganz lesen</translation>
    </message>
    <message>
        <source>%1: only the first reason</source>
        <translation>%1: nur der erste Grund</translation>
    </message>
    <message>
        <source>%1: all reasons</source>
        <translation>%1: alle Gründe</translation>
    </message>
</context>
<context>
    <name>app::CameraMenu</name>
    <message>
        <source>Ca&amp;mera</source>
        <translation>&amp;Kamera</translation>
    </message>
    <message>
        <source>&amp;Start the camera</source>
        <translation>Kamera &amp;starten</translation>
    </message>
    <message>
        <source>S&amp;top the camera</source>
        <translation>Kamera &amp;anhalten</translation>
    </message>
    <message>
        <source>Read a &amp;video or pictures…</source>
        <translation>&amp;Video oder Bilder lesen…</translation>
    </message>
    <message>
        <source>Read a &amp;folder of pictures…</source>
        <translation>&amp;Ordner mit Bildern lesen…</translation>
    </message>
    <message>
        <source>&amp;Mirror the picture</source>
        <translation>Bild s&amp;piegeln</translation>
    </message>
</context>
<context>
    <name>app::CameraPanel</name>
    <message>
        <source>Camera ▾</source>
        <translation>Kamera ▾</translation>
    </message>
    <message>
        <source>camera: which one, mirrored or not, a video or pictures instead</source>
        <translation>Kamera: welche, gespiegelt oder nicht, statt ihrer Video oder Bilder</translation>
    </message>
    <message>
        <source>how much of the recording is read</source>
        <translation>wie viel der Aufnahme gelesen ist</translation>
    </message>
    <message>
        <source>tag code</source>
        <translation>Etikettencode</translation>
    </message>
    <message>
        <source>no camera is plugged in</source>
        <translation>keine Kamera angeschlossen</translation>
    </message>
    <message>
        <source>mirror the picture</source>
        <translation>Bild spiegeln</translation>
    </message>
    <message>
        <source>camera off</source>
        <translation>Kamera aus</translation>
    </message>
    <message>
        <source>read a video or pictures…</source>
        <translation>Video oder Bilder lesen…</translation>
    </message>
    <message>
        <source>read a folder of pictures…</source>
        <translation>Ordner mit Bildern lesen…</translation>
    </message>
    <message>
        <source>Type the code on a tag, or use a hand-held scanner: no field has to be chosen.</source>
        <translation>Code vom Etikett tippen oder Handscanner benutzen: Es muss kein Feld gewählt sein.</translation>
    </message>
    <message>
        <source>No camera.</source>
        <translation>Keine Kamera.</translation>
    </message>
    <message>
        <source>A camera that is plugged in starts by itself.</source>
        <translation>Eine angesteckte Kamera startet von selbst.</translation>
    </message>
    <message>
        <source>The camera sends no picture.</source>
        <translation>Die Kamera liefert kein Bild.</translation>
    </message>
    <message>
        <source>It is tried again by itself.</source>
        <translation>Es wird von selbst neu versucht.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>Die Kamera startet.</translation>
    </message>
    <message>
        <source>The camera is off.</source>
        <translation>Die Kamera ist aus.</translation>
    </message>
    <message>
        <source>The recording has been read to its end.</source>
        <translation>Die Aufnahme ist zu Ende gelesen.</translation>
    </message>
    <message>
        <source>Too dark: more light on the tags.</source>
        <translation>Zu dunkel: mehr Licht auf die Etiketten.</translation>
    </message>
    <message>
        <source>Glare: tilt the tag, or move the lamp.</source>
        <translation>Spiegelung: Etikett kippen oder Lampe wegdrehen.</translation>
    </message>
    <message>
        <source>Blurred: hold still, or move further off.</source>
        <translation>Unscharf: stillhalten oder weiter weg.</translation>
    </message>
    <message>
        <source>Too far: bring the tags nearer.</source>
        <translation>Zu weit weg: Etiketten näher bringen.</translation>
    </message>
    <message>
        <source>A picture that is in a file can be added in its place.</source>
        <translation>Stattdessen lässt sich ein Bild aus einer Datei hinzufügen.</translation>
    </message>
    <message>
        <source>The camera of the network cannot be reached.</source>
        <translation>Die Kamera im Netzwerk ist nicht erreichbar.</translation>
    </message>
    <message>
        <source>It is tried again by itself. Look at its plug, its address and its password.</source>
        <translation>Der Versuch wird von selbst wiederholt. Stecker, Adresse und Passwort prüfen.</translation>
    </message>
    <message>
        <source>camera of the network…</source>
        <translation>Kamera im Netzwerk…</translation>
    </message>
</context>
<context>
    <name>app::CameraView</name>
    <message>
        <source>camera picture</source>
        <translation>Kamerabild</translation>
    </message>
</context>
<context>
    <name>app::CellField</name>
    <message>
        <source>which kind?</source>
        <translation>welcher Art?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>%1 (as usual)</source>
        <translation>%1 (wie üblich)</translation>
    </message>
    <message>
        <source>What the register says under “%1”.</source>
        <translation>Was im Register unter „%1“ steht.</translation>
    </message>
    <message>
        <source>What the register says under “%1”, in %2.</source>
        <translation>Was im Register unter „%1“ steht, in %2.</translation>
    </message>
</context>
<context>
    <name>app::CheckHead</name>
    <message>
        <source>begun %1</source>
        <translation>begonnen %1</translation>
    </message>
</context>
<context>
    <name>app::CheckLists</name>
    <message>
        <source>kit and points of this check</source>
        <translation>Ausrüstung und Prüfpunkte dieser Prüfung</translation>
    </message>
    <message>
        <source>points of this check</source>
        <translation>Prüfpunkte dieser Prüfung</translation>
    </message>
    <message>
        <source>%1, %2 of them points</source>
        <translation>%1, davon %2 Punkte</translation>
    </message>
</context>
<context>
    <name>app::CheckMenu</name>
    <message>
        <source>Ch&amp;eck</source>
        <translation>&amp;Prüfung</translation>
    </message>
    <message>
        <source>&amp;Launch check of this boat</source>
        <translation>&amp;Auslaufprüfung dieses Boots</translation>
    </message>
    <message>
        <source>&amp;Return check of this boat</source>
        <translation>&amp;Rückkehrprüfung dieses Boots</translation>
    </message>
    <message>
        <source>&amp;Sign…</source>
        <translation>&amp;Unterschreiben…</translation>
    </message>
    <message>
        <source>Save for &amp;later</source>
        <translation>Für &amp;später sichern</translation>
    </message>
    <message>
        <source>&amp;Next boat</source>
        <translation>&amp;Nächstes Boot</translation>
    </message>
    <message>
        <source>Take this line&apos;s scan &amp;back</source>
        <translation>Scan dieser Zeile zurückneh&amp;men</translation>
    </message>
    <message>
        <source>&amp;Damaged…</source>
        <translation>&amp;Beschädigt…</translation>
    </message>
    <message>
        <source>&amp;Who is aboard</source>
        <translation>&amp;Wer ist an Bord</translation>
    </message>
    <message>
        <source>The &amp;points</source>
        <translation>Die &amp;Prüfpunkte</translation>
    </message>
    <message>
        <source>The &amp;trip…</source>
        <translation>&amp;Fahrt…</translation>
    </message>
    <message>
        <source>Start or stop the &amp;clock</source>
        <translation>U&amp;hr starten oder anhalten</translation>
    </message>
    <message>
        <source>&amp;Undo what was done last</source>
        <translation>Das Letzte &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>C&amp;heck list on paper…</source>
        <translation>Prüf&amp;liste auf Papier…</translation>
    </message>
    <message>
        <source>Wall c&amp;ard…</source>
        <translation>&amp;Wandkarte…</translation>
    </message>
    <message>
        <source>Cl&amp;ose unsigned…</source>
        <translation>Ohne Unterschrift s&amp;chließen…</translation>
    </message>
</context>
<context>
    <name>app::CheckPage</name>
    <message>
        <source>%1 running</source>
        <translation>%1 läuft</translation>
    </message>
    <message>
        <source>Trip: %1</source>
        <translation>Fahrt: %1</translation>
    </message>
    <message>
        <source>Write the trip into the log…</source>
        <translation>Fahrt ins Logbuch schreiben…</translation>
    </message>
</context>
<context>
    <name>app::ClubCopies</name>
    <message>
        <source>Open a club file first.</source>
        <translation>Zuerst eine Vereinsdatei öffnen.</translation>
    </message>
    <message>
        <source>Backed up, and looked through: %1</source>
        <translation>Gesichert und durchgesehen: %1</translation>
    </message>
    <message>
        <source>Backed up to %1, but the record has a fault: %2.</source>
        <translation>Gesichert nach %1, aber die Aufzeichnung hat einen Fehler: %2.</translation>
    </message>
    <message>
        <source>Restored from %1. What was recorded after that backup is not in it.</source>
        <translation>Wiederhergestellt aus %1. Was nach dieser Sicherung aufgezeichnet wurde, ist nicht darin.</translation>
    </message>
    <message>
        <source>After each signed check a copy goes to %1; the last %2 are kept.</source>
        <translation>Nach jeder unterschriebenen Prüfung geht eine Kopie nach %1; die letzten %2 bleiben.</translation>
    </message>
    <message>
        <source>No more copies are made after checks. Those in the folder stay.</source>
        <translation>Nach Prüfungen entstehen keine Kopien mehr. Die im Ordner bleiben.</translation>
    </message>
    <message>
        <source>The copy after the last check failed. %1</source>
        <translation>Die Kopie nach der letzten Prüfung ist misslungen. %1</translation>
    </message>
</context>
<context>
    <name>app::ClubMenu</name>
    <message>
        <source>&amp;Club</source>
        <translation>&amp;Verein</translation>
    </message>
    <message>
        <source>&amp;Open a club file…</source>
        <translation>Vereinsdatei ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;New club file…</source>
        <translation>&amp;Neue Vereinsdatei…</translation>
    </message>
    <message>
        <source>&amp;Import a folder of CSV…</source>
        <translation>CSV-Ordner &amp;einlesen…</translation>
    </message>
    <message>
        <source>The &amp;boats</source>
        <translation>Die &amp;Boote</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>Back &amp;up…</source>
        <translation>&amp;Sichern…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Sicherung &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>A &amp;copy after each signed check…</source>
        <translation>&amp;Kopie nach jeder unterschriebenen Prüfung…</translation>
    </message>
    <message>
        <source>No &amp;more copies after checks</source>
        <translation>Keine Kopien &amp;mehr nach Prüfungen</translation>
    </message>
    <message>
        <source>&amp;Exchange with another file…</source>
        <translation>Mit einer anderen Datei aus&amp;tauschen…</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>Sperren (PI&amp;N)</translation>
    </message>
    <message>
        <source>Import a &amp;spreadsheet…</source>
        <translation>&amp;Tabelle einlesen…</translation>
    </message>
    <message>
        <source>Mend the club’s n&amp;ame…</source>
        <translation>Vereinsnamen be&amp;richtigen…</translation>
    </message>
</context>
<context>
    <name>app::ColumnMeanings</name>
    <message>
        <source>what the column “%1” means</source>
        <translation>was die Spalte „%1“ bedeutet</translation>
    </message>
    <message>
        <source>Where the cells of this column go.</source>
        <translation>Wohin die Zellen dieser Spalte kommen.</translation>
    </message>
</context>
<context>
    <name>app::DueChart</name>
    <message>
        <source>what falls due, month by month</source>
        <translation>was fällig wird, Monat für Monat</translation>
    </message>
    <message>
        <source>due days</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Nothing falls due here: no kit has a day to come, and none is overdue.</source>
        <translation>Hier wird nichts fällig: keine Ausrüstung hat einen Tag, der noch kommt, und keine ist überfällig.</translation>
    </message>
</context>
<context>
    <name>app::DuePage</name>
    <message>
        <source>what falls due, month by month, in numbers</source>
        <translation>was fällig wird, Monat für Monat, in Zahlen</translation>
    </message>
    <message>
        <source>what falls due in the chosen month, and why</source>
        <translation>was im gewählten Monat fällig wird, und warum</translation>
    </message>
    <message>
        <source>kit type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>all kit</source>
        <translation>alle Ausrüstung</translation>
    </message>
    <message>
        <source>all sizes</source>
        <translation>alle Größen</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>As a chart</source>
        <translation>Als Bild</translation>
    </message>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
</context>
<context>
    <name>app::EndPanel</name>
    <message>
        <source>its last day here</source>
        <translation>der letzte Tag hier</translation>
    </message>
    <message>
        <source>It stays</source>
        <translation>Es bleibt</translation>
    </message>
    <message>
        <source>No longer here</source>
        <translation>Nicht mehr hier</translation>
    </message>
    <message>
        <source>From the day after it is in no list to choose from, on no board and in no plan. What is recorded stays. Empty “here until” to bring it back.</source>
        <translation>Vom Tag danach an steht es in keiner Auswahl, auf keiner Tafel und in keinem Plan. Was aufgezeichnet ist, bleibt. „Hier bis“ leeren holt es zurück.</translation>
    </message>
    <message>
        <source>Which is the last day of “%1”?</source>
        <translation>Welches ist der letzte Tag von „%1“?</translation>
    </message>
    <message>
        <source>“%1” is here until %2.</source>
        <translation>„%1“ ist hier bis %2.</translation>
    </message>
</context>
<context>
    <name>app::EventFiling</name>
    <message>
        <source>File it there</source>
        <translation>Dort ablegen</translation>
    </message>
    <message>
        <source>a check that belongs to another event</source>
        <translation>eine Prüfung, die zu einer anderen Veranstaltung gehört</translation>
    </message>
    <message>
        <source>the event that it belongs to</source>
        <translation>die Veranstaltung, zu der sie gehört</translation>
    </message>
    <message>
        <source>another event</source>
        <translation>andere Veranstaltung</translation>
    </message>
    <message>
        <source>Wrongly filed?</source>
        <translation>Falsch abgelegt?</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>boat, phase, when</comment>
        <translation>%1, %2, %3</translation>
    </message>
</context>
<context>
    <name>app::EventLine</name>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>today&apos;s event: a patrol, training day or carnival</source>
        <translation>Veranstaltung heute: Wache, Übungstag oder Fest</translation>
    </message>
    <message>
        <source>patrol, training …</source>
        <translation>Wache, Übung …</translation>
    </message>
    <message>
        <source>Today&apos;s event: %1, until %2</source>
        <translation>Heute: %1, bis %2</translation>
    </message>
    <message>
        <source>Today&apos;s event:</source>
        <translation>Heute:</translation>
    </message>
</context>
<context>
    <name>app::EventPage</name>
    <message>
        <source>name of an event, or a day</source>
        <translation>Name eines Einsatzes oder ein Tag</translation>
    </message>
    <message>
        <source>what went out and came back</source>
        <translation>was hinausging und zurückkam</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Event, or day</source>
        <translation>Einsatz oder Tag</translation>
    </message>
    <message>
        <source>Nothing was filed under that: give the name of a patrol, training day or carnival that checks were filed under, or a day like 2026-03-14.</source>
        <translation>Darunter ist nichts abgelegt: den Namen einer Wache, eines Übungstags oder Fests angeben, unter dem Prüfungen abgelegt sind, oder einen Tag wie 2026-03-14.</translation>
    </message>
    <message>
        <source>Event %1</source>
        <translation>Einsatz %1</translation>
    </message>
    <message>
        <source>The check is filed under %1 now.</source>
        <translation>Die Prüfung ist jetzt unter %1 abgelegt.</translation>
    </message>
</context>
<context>
    <name>app::EvidencePanel</name>
    <message>
        <source>Look it up</source>
        <translation>Nachsehen</translation>
    </message>
    <message>
        <source>what was aboard</source>
        <translation>was an Bord war</translation>
    </message>
    <message>
        <source>boat</source>
        <translation>Boot</translation>
    </message>
    <message>
        <source>day and time</source>
        <translation>Tag und Uhrzeit</translation>
    </message>
    <message>
        <source>day and time, like 2026-03-14 06:40</source>
        <translation>Tag und Uhrzeit, wie 2026-03-14 06:40</translation>
    </message>
    <message>
        <source>Write the day and the time like 2026-03-14 06:40.</source>
        <translation>Tag und Uhrzeit so schreiben wie 2026-03-14 06:40.</translation>
    </message>
    <message>
        <source>%1 aboard %2.pdf</source>
        <translation>%1 an Bord %2.pdf</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1.</source>
        <translation>Das Blatt ließ sich nicht nach %1 schreiben.</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer.</source>
        <translation>Das Blatt ging an den Drucker.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen.</translation>
    </message>
    <message>
        <source>photographs, which are on the sheet</source>
        <translation>Fotos, die auf dem Blatt sind</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
</context>
<context>
    <name>app::ExchangePage</name>
    <message>
        <source>By stick or file</source>
        <translation>Über Stick oder Datei</translation>
    </message>
    <message>
        <source>With the district</source>
        <translation>Mit dem Bezirk</translation>
    </message>
</context>
<context>
    <name>app::FileExchangePanel</name>
    <message>
        <source>Look again</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Datei wählen…</translation>
    </message>
    <message>
        <source>Take a copy along…</source>
        <translation>Kopie mitnehmen…</translation>
    </message>
    <message>
        <source>As a new machine…</source>
        <translation>Als neues Gerät…</translation>
    </message>
    <message>
        <source>club files on sticks</source>
        <translation>Vereinsdateien auf Sticks</translation>
    </message>
    <message>
        <source>what somebody must look at</source>
        <translation>wo jemand hinsehen muss</translation>
    </message>
    <message>
        <source>the two files are being looked through</source>
        <translation>die beiden Dateien werden durchgesehen</translation>
    </message>
    <message>
        <source>Club files on sticks</source>
        <translation>Vereinsdateien auf Sticks</translation>
    </message>
    <message>
        <source>That is the file that is open here. Choose that of the other machine.</source>
        <translation>Das ist die Datei, die hier offen ist. Die des anderen Geräts wählen.</translation>
    </message>
    <message>
        <source>%1 is being looked through; nothing is written yet…</source>
        <translation>%1 wird durchgesehen; noch wird nichts geschrieben…</translation>
    </message>
    <message>
        <source>%1: nothing is to be exchanged.</source>
        <translation>%1: Es gibt nichts auszutauschen.</translation>
    </message>
    <message>
        <source>%1: nothing is written yet.</source>
        <translation>%1: Noch ist nichts geschrieben.</translation>
    </message>
    <message>
        <source>%1: nothing was taken in.</source>
        <translation>%1: Nichts wurde aufgenommen.</translation>
    </message>
    <message>
        <source>There is no file of this club on %1 yet.</source>
        <translation>Auf %1 ist noch keine Datei dieses Vereins.</translation>
    </message>
    <message>
        <source>A copy, %1, is made there, to be opened on another machine. It holds all that this file holds, people&apos;s measures too: keep it as you keep this file.</source>
        <translation>Dort wird eine Kopie angelegt, %1, die auf einem anderen Gerät geöffnet wird. Sie enthält alles, was diese Datei enthält, auch die Maße der Leute: so aufbewahren wie diese Datei.</translation>
    </message>
    <message>
        <source>The two files are being exchanged: leave the stick in…</source>
        <translation>Die beiden Dateien werden ausgetauscht: den Stick stecken lassen…</translation>
    </message>
    <message>
        <source>Only one way was done.</source>
        <translation>Nur ein Weg wurde erledigt.</translation>
    </message>
    <message>
        <source>Done: the stick can be taken out.</source>
        <translation>Fertig: Der Stick kann heraus.</translation>
    </message>
    <message>
        <source>The copy is being made: leave the stick in…</source>
        <translation>Die Kopie wird angelegt: den Stick stecken lassen…</translation>
    </message>
    <message>
        <source>A copy was made, and looked through: %1. Open it on the other machine.</source>
        <translation>Eine Kopie wurde angelegt und durchgesehen: %1. Auf dem anderen Gerät öffnen.</translation>
    </message>
    <message>
        <source>to look at</source>
        <translation>zum Hinsehen</translation>
    </message>
    <message>
        <source>No stick is in. Put one in and press “Look again”, or choose the file of another machine, in a shared folder say. What it holds comes in, and what is recorded here goes there: afterwards both files hold both. Before anything is written the page says what it would be.

For a machine that has no file of this club yet, take a copy along.</source>
        <translation>Kein Stick steckt. Einen einstecken und „Noch einmal nachsehen“ drücken, oder die Datei eines anderen Geräts wählen, etwa in einem gemeinsamen Ordner. Was sie enthält, kommt herein, und was hier steht, geht dorthin: Danach enthalten beide Dateien beides. Bevor etwas geschrieben wird, sagt die Seite, was es wäre.

Für ein Gerät, das noch keine Datei dieses Vereins hat, eine Kopie mitnehmen.</translation>
    </message>
    <message>
        <source>Take a copy along</source>
        <translation>Kopie mitnehmen</translation>
    </message>
    <message>
        <source>Take it in as a new machine</source>
        <translation>Als neues Gerät aufnehmen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Exchange both ways</source>
        <translation>In beide Richtungen austauschen</translation>
    </message>
</context>
<context>
    <name>app::FitOutPanel</name>
    <message>
        <source>Back to what is to do</source>
        <translation>Zurück zur Übersicht</translation>
    </message>
    <message>
        <source>what is asked, and what is new</source>
        <translation>was verlangt ist und was neu ist</translation>
    </message>
    <message>
        <source>Fit out</source>
        <translation>Ausrüsten:</translation>
    </message>
    <message>
        <source>New ones</source>
        <translation>Neue</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hergestellt</translation>
    </message>
    <message>
        <source>First use</source>
        <translation>Erstgebrauch</translation>
    </message>
    <message>
        <source>Stamped</source>
        <translation>Aufdruck</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennr.</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Wem</translation>
    </message>
    <message>
        <source>spares at %1</source>
        <translation>Reserve in %1</translation>
    </message>
    <message>
        <source>no boat yet</source>
        <translation>noch kein Boot</translation>
    </message>
    <message>
        <source>There is no boat yet: write it first, then fit it out.</source>
        <translation>Noch gibt es kein Boot: zuerst eintragen, dann ausrüsten.</translation>
    </message>
    <message>
        <source>The club wants no spares yet: write of a kit type how many.</source>
        <translation>Noch will der Verein keine Reserve: bei einer Art eintragen, wie viele.</translation>
    </message>
    <message>
        <source>The spares of the club, wherever they lie</source>
        <translation>Die Reserve des Vereins, wo immer sie liegt</translation>
    </message>
    <message>
        <source>What the manifest asks, and what is there</source>
        <translation>Was die Packliste verlangt und was da ist</translation>
    </message>
    <message>
        <source>not the same for all</source>
        <translation>nicht bei allen gleich</translation>
    </message>
    <message>
        <source>2026-03, say</source>
        <translation>z. B. 2026-03</translation>
    </message>
    <message>
        <source>one by one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>no size yet</source>
        <translation>noch ohne Größe</translation>
    </message>
    <message>
        <source>has no sizes</source>
        <translation>ohne Größen</translation>
    </message>
    <message>
        <source>nobody&apos;s yet</source>
        <translation>noch niemandes</translation>
    </message>
    <message>
        <source>nobody&apos;s own</source>
        <translation>niemandem</translation>
    </message>
    <message>
        <source>This boat has no class, so nothing is asked of it: choose one under Register first.</source>
        <translation>Dieses Boot hat keine Klasse, also wird nichts von ihm verlangt: zuerst unter Verzeichnis eine wählen.</translation>
    </message>
    <message>
        <source>Nothing is asked of class “%1” yet: write its list under Manifests first, or give the boat the right class under Register.</source>
        <translation>Von der Klasse „%1“ wird noch nichts verlangt: zuerst unter Packlisten ihre Liste schreiben, oder dem Boot unter Verzeichnis die richtige Klasse geben.</translation>
    </message>
    <message>
        <source>Their tags as PDF…</source>
        <translation>Etiketten als PDF…</translation>
    </message>
</context>
<context>
    <name>app::GearOffice</name>
    <message>
        <source>Recorded as done by</source>
        <translation>Eingetragen von</translation>
    </message>
    <message>
        <source>pages of the gear officer</source>
        <translation>Seiten des Gerätewarts</translation>
    </message>
    <message>
        <source>whose name is recorded</source>
        <translation>wessen Name eingetragen wird</translation>
    </message>
    <message>
        <source>choose a name</source>
        <translation>Namen wählen</translation>
    </message>
</context>
<context>
    <name>app::GearPart</name>
    <message>
        <source>Choose your name first, under “Recorded as done by”.</source>
        <translation>Erst unter „Eingetragen von“ einen Namen wählen.</translation>
    </message>
    <message>
        <source>Nobody is in the register yet: write yourself first, on the page Register under “people”.</source>
        <translation>Noch steht niemand im Verzeichnis: zuerst den eigenen Namen schreiben, auf der Seite Verzeichnis unter „Leute“.</translation>
    </message>
</context>
<context>
    <name>app::HelpPage</name>
    <message>
        <source>the help of the page</source>
        <translation>die Hilfe zur Seite</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1 is not part of the help.</source>
        <translation>%1 gehört nicht zur Hilfe.</translation>
    </message>
</context>
<context>
    <name>app::HistoryPanel</name>
    <message>
        <source>type or scan a tag</source>
        <translation>Code tippen oder Etikett scannen</translation>
    </message>
    <message>
        <source>what was recorded, newest first</source>
        <translation>was eingetragen ist, Neuestes zuerst</translation>
    </message>
    <message>
        <source>boat or person</source>
        <translation>Boot oder Person</translation>
    </message>
    <message>
        <source>or a tag</source>
        <translation>oder ein Etikett</translation>
    </message>
    <message>
        <source>tag code of an item, a boat or a person</source>
        <translation>Code eines Stücks, eines Boots oder einer Person</translation>
    </message>
    <message>
        <source>Choose a boat or a person, or show a tag.</source>
        <translation>Ein Boot oder eine Person wählen oder ein Etikett zeigen.</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>app::HubPanel</name>
    <message>
        <source>where the district&apos;s server is</source>
        <translation>wo der Server des Bezirks ist</translation>
    </message>
    <message>
        <source>People&apos;s measures go there, too</source>
        <translation>Auch die Maße der Leute gehen dorthin</translation>
    </message>
    <message>
        <source>Exchange with it no more</source>
        <translation>Nicht mehr austauschen</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Jetzt austauschen</translation>
    </message>
    <message>
        <source>Join it</source>
        <translation>Beitreten</translation>
    </message>
    <message>
        <source>what somebody must look at</source>
        <translation>wo jemand hinsehen muss</translation>
    </message>
    <message>
        <source>A district may keep a server with which all its clubs&apos; machines exchange by themselves, whenever they reach it. Whoever keeps it says what to write here. The password stands in the file .pgpass of this computer&apos;s user, never here.</source>
        <translation>Ein Bezirk kann einen Server betreiben, mit dem die Geräte aller seiner Vereine sich von selbst austauschen, sobald sie ihn erreichen. Wer ihn betreibt, sagt, was hier einzutragen ist. Das Passwort steht in der Datei .pgpass des Benutzers dieses Computers, nie hier.</translation>
    </message>
    <message>
        <source>This file exchanges with no server.</source>
        <translation>Diese Datei wird mit keinem Server ausgetauscht.</translation>
    </message>
    <message>
        <source>Came in since this file was opened here: %1.</source>
        <translation>Hereingekommen, seit diese Datei hier geöffnet ist: %1.</translation>
    </message>
    <message>
        <source>to look at</source>
        <translation>zum Hinsehen</translation>
    </message>
    <message>
        <source>The server is being asked…</source>
        <translation>Der Server wird gefragt…</translation>
    </message>
    <message>
        <source>Joined: from now on it is exchanged with by itself.</source>
        <translation>Beigetreten: Von jetzt an wird von selbst ausgetauscht.</translation>
    </message>
    <message>
        <source>It is exchanged with no more. What the server has stays there.</source>
        <translation>Es wird nicht mehr ausgetauscht. Was der Server hat, bleibt dort.</translation>
    </message>
</context>
<context>
    <name>app::HubWatch</name>
    <message>
        <source>Exchanged with the district %1.</source>
        <translation>Mit dem Bezirk ausgetauscht %1.</translation>
    </message>
    <message>
        <source>Exchanging with the district…</source>
        <translation>Der Austausch mit dem Bezirk läuft…</translation>
    </message>
    <message>
        <source>The district was not reached since %1: working alone.</source>
        <translation>Der Bezirk wurde seit %1 nicht erreicht: Es geht allein weiter.</translation>
    </message>
    <message>
        <source>The district was not reached yet: working alone.</source>
        <translation>Der Bezirk wurde noch nicht erreicht: Es geht allein weiter.</translation>
    </message>
    <message>
        <source>▲ Not exchanged with the district: %1.</source>
        <translation>▲ Nicht mit dem Bezirk ausgetauscht: %1.</translation>
    </message>
</context>
<context>
    <name>app::ImportRun</name>
    <message>
        <source>Nothing was imported. Mend these rows and import again:</source>
        <translation>Nichts wurde eingelesen. Diese Zeilen berichtigen und neu einlesen:</translation>
    </message>
    <message>
        <source>%1, row %2 %3: %4</source>
        <translation>%1, Zeile %2 %3: %4</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>%1, row %2: %3</source>
        <translation>%1, Zeile %2: %3</translation>
    </message>
</context>
<context>
    <name>app::ItemPanel</name>
    <message>
        <source>Withdraw it: damaged</source>
        <translation>Sperren: beschädigt</translation>
    </message>
    <message>
        <source>Take this scan back</source>
        <translation>Diesen Scan zurücknehmen</translation>
    </message>
    <message>
        <source>what is damaged</source>
        <translation>was beschädigt ist</translation>
    </message>
    <message>
        <source>Damaged? Say in a sentence what is the matter. It then counts for no boat until it is released.</source>
        <translation>Beschädigt? In einem Satz sagen, was los ist. Es zählt dann für kein Boot, bis es freigegeben ist.</translation>
    </message>
    <message>
        <source>Back to the check</source>
        <translation>Zurück zur Prüfung</translation>
    </message>
    <message>
        <source>It was used or inflated, today:</source>
        <translation>Benutzt oder ausgelöst, heute:</translation>
    </message>
</context>
<context>
    <name>app::ItemRecordPanel</name>
    <message>
        <source>%1, %2</source>
        <comment>part, rule</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2: passed</source>
        <translation>%1, %2: i. O.</translation>
    </message>
    <message>
        <source>%1, %2: not passed</source>
        <translation>%1, %2: nicht i. O.</translation>
    </message>
    <message>
        <source>Made in error…</source>
        <translation>Irrtümlich…</translation>
    </message>
    <message>
        <source>Why does this record not count? It stays in the history with your reason.</source>
        <translation>Warum zählt dieser Nachweis nicht? Er bleibt mit dem Grund im Verlauf.</translation>
    </message>
    <message>
        <source>Withdraw this record</source>
        <translation>Nachweis zurücknehmen</translation>
    </message>
    <message>
        <source>service records of this item</source>
        <translation>Prüfnachweise dieses Stücks</translation>
    </message>
    <message>
        <source>It was used or inflated, today:</source>
        <translation>Benutzt oder ausgelöst, heute:</translation>
    </message>
    <message>
        <source>Recorded for today: %1. What its rules ask for is due now.</source>
        <translation>Für heute eingetragen: %1. Was die Regeln verlangen, ist jetzt fällig.</translation>
    </message>
    <message>
        <source>%1 is recorded for today already. Nothing was changed.</source>
        <translation>%1 ist für heute schon eingetragen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Withdrawn: the record counts no more, and the item&apos;s days and state are what they were before it.</source>
        <translation>Zurückgenommen: Der Nachweis zählt nicht mehr, Termine und Zustand sind wie vor ihm.</translation>
    </message>
</context>
<context>
    <name>app::KeepQuestion</name>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
</context>
<context>
    <name>app::KitChangePanel</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>parts of the item</source>
        <translation>Teile des Stücks</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Its part: %1</source>
        <translation>Sein Teil: %1</translation>
    </message>
    <message>
        <source>A new part of it</source>
        <translation>Ein neues Teil davon</translation>
    </message>
    <message>
        <source>New part…</source>
        <translation>Neues Teil…</translation>
    </message>
</context>
<context>
    <name>app::KitItemPanel</name>
    <message>
        <source>New tag</source>
        <translation>Neues Etikett</translation>
    </message>
    <message>
        <source>Release: it was put right</source>
        <translation>Freigeben: wieder in Ordnung</translation>
    </message>
    <message>
        <source>dates, parts, log and history of this item</source>
        <translation>Termine, Teile, Logbuch und Verlauf dieses Stücks</translation>
    </message>
    <message>
        <source>The new tag is %1. Print and fix it; the old tag no longer works.</source>
        <translation>Das neue Etikett ist %1. Drucken und anbringen; das alte gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Released: it counts again. An open log entry about it is closed on the page Log.</source>
        <translation>Freigegeben: es zählt wieder. Ein offener Eintrag dazu wird auf der Seite Logbuch erledigt.</translation>
    </message>
    <message>
        <source>Written off. Take it out of the boats and destroy its tag; its history stays.</source>
        <translation>Ausgesondert. Aus den Booten nehmen und das Etikett vernichten; der Verlauf bleibt.</translation>
    </message>
    <message>
        <source>Written off by mistake, or found again? Say why it is back.</source>
        <translation>Aus Versehen ausgesondert oder wiedergefunden? Sagen, warum es wieder da ist.</translation>
    </message>
    <message>
        <source>Reinstate it</source>
        <translation>Wieder in Gebrauch nehmen</translation>
    </message>
    <message>
        <source>Reinstated: it is what it was before. %1</source>
        <translation>Wieder in Gebrauch: Es ist, was es vorher war. %1</translation>
    </message>
    <message>
        <source>Its tag as PDF…</source>
        <translation>Etikett als PDF…</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
</context>
<context>
    <name>app::KitPage</name>
    <message>
        <source>find kit: type a part of its tag, type, size, home, person, maker or serial</source>
        <translation>Ausrüstung suchen: einen Teil von Code, Art, Größe, Platz, Person, Hersteller oder Seriennummer tippen</translation>
    </message>
    <message>
        <source>find: tag, type, boat, person, serial …</source>
        <translation>suchen: Code, Art, Boot, Person, Nummer …</translation>
    </message>
    <message>
        <source>kit that was found</source>
        <translation>gefundene Ausrüstung</translation>
    </message>
    <message>
        <source>%1 in the register</source>
        <translation>%1 im Verzeichnis</translation>
    </message>
    <message>
        <source>%1 of %2 found</source>
        <translation>%1 von %2 gefunden</translation>
    </message>
    <message>
        <source>%1 is not this club&apos;s kit.</source>
        <translation>%1 ist keine Ausrüstung dieses Vereins.</translation>
    </message>
    <message>
        <source>last first</source>
        <translation>umgekehrt</translation>
    </message>
    <message>
        <source>kit of which state</source>
        <translation>Ausrüstung in welchem Zustand</translation>
    </message>
    <message>
        <source>to look at</source>
        <translation>anzusehen</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>einsatzbereit</translation>
    </message>
    <message>
        <source>unserviceable</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>vermisst</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>ausgesondert</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>kit of which boat or place</source>
        <translation>Ausrüstung welches Bootes oder Ortes</translation>
    </message>
    <message>
        <source>kit of which type</source>
        <translation>Ausrüstung welcher Art</translation>
    </message>
    <message>
        <source>in which order</source>
        <translation>in welcher Reihenfolge</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>nach: %1</translation>
    </message>
    <message>
        <source>any home</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>no home</source>
        <translation>ohne Ort</translation>
    </message>
    <message>
        <source>any type</source>
        <translation>jede Art</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>New kit…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>im Dienst</translation>
    </message>
    <message>
        <source>No kit yet. Register the first with “New kit…”, or import a folder of CSV or a spreadsheet.</source>
        <translation>Noch keine Ausrüstung. Die erste mit „Neu…“ eintragen oder einen Ordner mit CSV oder eine Tabelle einlesen.</translation>
    </message>
</context>
<context>
    <name>app::KitSeveralPanel</name>
    <message>
        <source>Untick all</source>
        <translation>Keine auswählen</translation>
    </message>
    <message>
        <source>what to do with the items that are ticked</source>
        <translation>was mit den ausgewählten Stücken geschieht</translation>
    </message>
    <message>
        <source>why they are written off</source>
        <translation>warum sie ausgesondert werden</translation>
    </message>
    <message>
        <source>the boat or place that they are moved to</source>
        <translation>das Boot oder der Ort, wohin sie verlegt werden</translation>
    </message>
    <message>
        <source>whose they are from now on; empty: nobody&apos;s</source>
        <translation>wem sie von nun an gehören; leer: niemandem</translation>
    </message>
    <message>
        <source>their size</source>
        <translation>ihre Größe</translation>
    </message>
    <message>
        <source>boat or place</source>
        <translation>Boot oder Ort</translation>
    </message>
    <message>
        <source>person; empty: nobody&apos;s</source>
        <translation>Person; leer: niemandes</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Nothing was changed. %1 %2: %3.</source>
        <translation>Nichts wurde geändert. %1 %2: %3.</translation>
    </message>
    <message>
        <source>Write them off as %1? They count nowhere from then on.</source>
        <translation>Als „%1“ aussondern? Sie zählen von da an nirgends mehr.</translation>
    </message>
    <message>
        <source>Written off. Take them out of the boats and destroy their tags; their history stays.</source>
        <translation>Ausgesondert. Aus den Booten nehmen und die Etiketten vernichten; ihre Geschichte bleibt.</translation>
    </message>
    <message>
        <source>Move to…</source>
        <translation>Verlegen nach…</translation>
    </message>
    <message>
        <source>Give to…</source>
        <translation>Übergeben an…</translation>
    </message>
    <message>
        <source>Size…</source>
        <translation>Größe…</translation>
    </message>
    <message>
        <source>Write off…</source>
        <translation>Aussondern…</translation>
    </message>
    <message>
        <source>Tags…</source>
        <translation>Etiketten…</translation>
    </message>
</context>
<context>
    <name>app::LetGoPanel</name>
    <message>
        <source>Why is it closed without a signature?</source>
        <translation>Warum wird sie ohne Unterschrift geschlossen?</translation>
    </message>
    <message>
        <source>Close it unsigned</source>
        <translation>Ohne Unterschrift schließen</translation>
    </message>
    <message>
        <source>Back to the check</source>
        <translation>Zurück zur Prüfung</translation>
    </message>
    <message>
        <source>Close this check unsigned</source>
        <translation>Diese Prüfung ohne Unterschrift schließen</translation>
    </message>
    <message>
        <source>Recorded last: %1.</source>
        <translation>Zuletzt eingetragen: %1.</translation>
    </message>
    <message>
        <source>Nobody signs it and nothing is marked as missing. What was seen, and what was damaged, stays recorded; hours of a trip do not count.</source>
        <translation>Niemand unterschreibt, und nichts gilt deshalb als vermisst. Was gesehen und was beschädigt wurde, bleibt eingetragen; Stunden einer Fahrt zählen nicht.</translation>
    </message>
</context>
<context>
    <name>app::LifePlot</name>
    <message>
        <source>how long kit lasts here</source>
        <translation>wie lange Ausrüstung hier hält</translation>
    </message>
    <message>
        <source>years in service</source>
        <translation>Jahre im Dienst</translation>
    </message>
    <message>
        <source>lasting</source>
        <translation>noch da</translation>
    </message>
    <message>
        <source>rule: %1</source>
        <translation>Regel: %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>app::LogPage</name>
    <message>
        <source>the log, open entries first</source>
        <translation>das Logbuch, offene Einträge zuerst</translation>
    </message>
    <message>
        <source>boat that the entry is about</source>
        <translation>Boot, um das es geht</translation>
    </message>
    <message>
        <source>tag code of the item it is about</source>
        <translation>Code des Stücks, um das es geht</translation>
    </message>
    <message>
        <source>or an item: its code</source>
        <translation>oder ein Stück: sein Code</translation>
    </message>
    <message>
        <source>what is the matter</source>
        <translation>was los ist</translation>
    </message>
    <message>
        <source>how much it matters</source>
        <translation>wie schwer es wiegt</translation>
    </message>
    <message>
        <source>a remark, to be read</source>
        <translation>ein Hinweis, zum Lesen</translation>
    </message>
    <message>
        <source>it stops the boat or item until closed</source>
        <translation>es sperrt Boot oder Stück, bis es erledigt ist</translation>
    </message>
    <message>
        <source>Write it into the log</source>
        <translation>Ins Logbuch schreiben</translation>
    </message>
    <message>
        <source>A new entry</source>
        <translation>Ein neuer Eintrag</translation>
    </message>
    <message>
        <source>what was done about it</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>Close this entry</source>
        <translation>Eintrag erledigen</translation>
    </message>
    <message>
        <source>which boat?</source>
        <translation>welches Boot?</translation>
    </message>
    <message>
        <source>%1
Closed %2: %3</source>
        <translation>%1
Erledigt am %2: %3</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Closed. An item that was withdrawn counts again once it is released on its page under Kit.</source>
        <translation>Erledigt. Ein gesperrtes Stück zählt wieder, sobald es auf seiner Seite unter Ausrüstung freigegeben ist.</translation>
    </message>
    <message>
        <source>%1 was scanned: the new entry is about it.</source>
        <translation>%1 wurde gescannt: Der neue Eintrag handelt davon.</translation>
    </message>
    <message>
        <source>New entry…</source>
        <translation>Neuer Eintrag…</translation>
    </message>
</context>
<context>
    <name>app::LogPanel</name>
    <message>
        <source>the boat&apos;s log</source>
        <translation>das Logbuch des Boots</translation>
    </message>
    <message>
        <source>Written %1.</source>
        <translation>Geschrieben %1.</translation>
    </message>
    <message>
        <source>Written %1, %2.</source>
        <translation>Geschrieben %1, %2.</translation>
    </message>
    <message>
        <source>It stops the boat until it is closed.</source>
        <translation>Das Boot ist gesperrt, bis er erledigt ist.</translation>
    </message>
    <message>
        <source>The boat&apos;s log: no open entry.</source>
        <translation>Logbuch: nichts offen.</translation>
    </message>
    <message>
        <source>The boat&apos;s log: %1.</source>
        <translation>Logbuch: %1.</translation>
    </message>
    <message>
        <source>Done %1: %2</source>
        <translation>Erledigt %1: %2</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Show the boat&apos;s log</source>
        <translation>Logbuch zeigen</translation>
    </message>
    <message>
        <source>I have read the boat&apos;s log</source>
        <translation>Ich habe das Logbuch gelesen</translation>
    </message>
</context>
<context>
    <name>app::MainWindow</name>
    <message>
        <source>Tholepin</source>
        <translation>Tholepin</translation>
    </message>
    <message>
        <source>how much of the import is done</source>
        <translation>wie viel eingelesen ist</translation>
    </message>
    <message>
        <source>%1 · Tholepin</source>
        <translation>%1 · Tholepin</translation>
    </message>
    <message>
        <source>%1 is no boat&apos;s tag. Choose the boat first, then scan its kit.</source>
        <translation>%1 ist kein Bootsetikett. Erst das Boot wählen, dann die Ausrüstung scannen.</translation>
    </message>
    <message>
        <source>&amp;Gear officer</source>
        <translation>&amp;Gerätewart</translation>
    </message>
    <message>
        <source>%1 was scanned; nothing here asks for a tag.</source>
        <translation>%1 wurde gescannt; hier wird nach keinem Etikett gefragt.</translation>
    </message>
    <message>
        <source>Choose a boat first.</source>
        <translation>Zuerst ein Boot wählen.</translation>
    </message>
    <message>
        <source>■ unlocked: %1 · Lock</source>
        <translation>■ entsperrt: %1 · Sperren</translation>
    </message>
    <message>
        <source>unlocked by %1: lock</source>
        <translation>entsperrt von %1: sperren</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Help on this &amp;page</source>
        <translation>Hilfe zu dieser &amp;Seite</translation>
    </message>
    <message>
        <source>“%1” stays open.</source>
        <translation>„%1“ bleibt offen.</translation>
    </message>
</context>
<context>
    <name>app::ManifestLinePanel</name>
    <message>
        <source>required</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>kit type of the new line</source>
        <translation>Ausrüstungsart der neuen Zeile</translation>
    </message>
    <message>
        <source>note of the line</source>
        <translation>Anmerkung der Zeile</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>What you write is %1&apos;s own and stays when the class changes.</source>
        <translation>Was hier eingetragen wird, gehört nur %1 und bleibt, wenn die Klasse sich ändert.</translation>
    </message>
    <message>
        <source>A new line, %1&apos;s own</source>
        <translation>Eine neue Zeile nur für %1</translation>
    </message>
    <message>
        <source>A new line of class %1</source>
        <translation>Eine neue Zeile der Klasse %1</translation>
    </message>
    <message>
        <source>which kit type?</source>
        <translation>welche Ausrüstungsart?</translation>
    </message>
    <message>
        <source>%1 removed. Checks signed before keep what they were asked.</source>
        <translation>%1 entfernt. Was vorher unterschrieben wurde, bleibt, wie es verlangt war.</translation>
    </message>
    <message>
        <source>%1: %2 asked from now on. Checks signed before keep what they were asked.</source>
        <translation>%1: ab jetzt %2 verlangt. Was vorher unterschrieben wurde, bleibt, wie es verlangt war.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1, Klasse %2</translation>
    </message>
    <message>
        <source>Substitutes…</source>
        <translation>Ersatz…</translation>
    </message>
    <message>
        <source>Still asked by a line of its own: %1.</source>
        <translation>Durch eigene Zeile weiter verlangt: %1.</translation>
    </message>
    <message>
        <source>no substitute</source>
        <translation>kein Ersatz</translation>
    </message>
    <message>
        <source>or %1</source>
        <translation>oder %1</translation>
    </message>
    <message>
        <source>no kit type can stand in</source>
        <translation>keine Ausrüstungsart passt als Ersatz</translation>
    </message>
    <message>
        <source>%1 is asked of %2 as of its class from now on.</source>
        <translation>%1: von %2 ab jetzt verlangt wie von der Klasse.</translation>
    </message>
    <message>
        <source>Remove line</source>
        <translation>Zeile entfernen</translation>
    </message>
</context>
<context>
    <name>app::ManifestPanel</name>
    <message>
        <source>Remove “%1” from class %2? It is then asked of its boats no more.</source>
        <translation>„%1“ bei der Klasse %2 entfernen? Von ihren Booten wird es dann nicht mehr verlangt.</translation>
    </message>
    <message>
        <source>Remove “%1” from %2? It is then asked of it no more.</source>
        <translation>„%1“ bei %2 entfernen? Dort wird es dann nicht mehr verlangt.</translation>
    </message>
    <message>
        <source>As the class</source>
        <translation>Wie die Klasse</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>removes what %1 has of its own: its class&apos;s holds again</source>
        <translation>entfernt, was %1 Eigenes hat: es gilt wieder, was die Klasse verlangt</translation>
    </message>
    <message>
        <source>Remove “%1” from class %2? No boat has the class.</source>
        <translation>„%1“ bei der Klasse %2 entfernen? Kein Boot hat die Klasse.</translation>
    </message>
    <message>
        <source>No boat has this class: what is asked by it can only be removed here, until a boat gets the class under Register.</source>
        <translation>Kein Boot hat diese Klasse: Was nach ihr verlangt wird, kann hier nur entfernt werden, bis unter Verzeichnis ein Boot die Klasse bekommt.</translation>
    </message>
</context>
<context>
    <name>app::ManifestPointPanel</name>
    <message>
        <source>name of the point</source>
        <translation>Name des Prüfpunkts</translation>
    </message>
    <message>
        <source>required</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>unit of the measure</source>
        <translation>Einheit des Messwerts</translation>
    </message>
    <message>
        <source>note of the point</source>
        <translation>Anmerkung zum Prüfpunkt</translation>
    </message>
    <message>
        <source>which point?</source>
        <translation>welcher Prüfpunkt?</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>in which check</source>
        <translation>bei welcher Prüfung</translation>
    </message>
    <message>
        <source>how it is checked</source>
        <translation>wie geprüft wird</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Still asked by a point of its own: %1.</source>
        <translation>Durch eigenen Prüfpunkt weiter verlangt: %1.</translation>
    </message>
    <message>
        <source>A new point, %1&apos;s own</source>
        <translation>Ein neuer Prüfpunkt nur für %1</translation>
    </message>
    <message>
        <source>A new point of class %1</source>
        <translation>Ein neuer Prüfpunkt der Klasse %1</translation>
    </message>
    <message>
        <source>%1: %2 asked from now on. Checks signed before keep what they were asked.</source>
        <translation>%1: ab jetzt %2 verlangt. Was vorher unterschrieben wurde, bleibt, wie es verlangt war.</translation>
    </message>
    <message>
        <source>%1 removed. Checks signed before keep what they were asked.</source>
        <translation>%1 entfernt. Was vorher unterschrieben wurde, bleibt, wie es verlangt war.</translation>
    </message>
    <message>
        <source>%1 is asked of %2 as of its class from now on.</source>
        <translation>%1: von %2 ab jetzt verlangt wie von der Klasse.</translation>
    </message>
    <message>
        <source>Maker&apos;s plate and manual decide.</source>
        <translation>Typenschild und Handbuch entscheiden.</translation>
    </message>
    <message>
        <source>What you write is %1&apos;s own and stays when the class changes.</source>
        <translation>Was hier eingetragen wird, gehört nur %1 und bleibt, wenn die Klasse sich ändert.</translation>
    </message>
    <message>
        <source>A point of %1</source>
        <translation>Ein Prüfpunkt von %1</translation>
    </message>
    <message>
        <source>A point of class %1</source>
        <translation>Ein Prüfpunkt der Klasse %1</translation>
    </message>
    <message>
        <source>Remove point</source>
        <translation>Prüfpunkt entfernen</translation>
    </message>
    <message>
        <source>%1, class %2</source>
        <translation>%1, Klasse %2</translation>
    </message>
</context>
<context>
    <name>app::ManifestsPage</name>
    <message>
        <source>lines</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>what is asked</source>
        <translation>was verlangt wird</translation>
    </message>
    <message>
        <source>versions of this manifest, newest first</source>
        <translation>Fassungen dieser Packliste, die neueste zuerst</translation>
    </message>
    <message>
        <source>export the register&apos;s sheets</source>
        <translation>die Tabellen des Verzeichnisses ausgeben</translation>
    </message>
    <message>
        <source>import changed sheets</source>
        <translation>geänderte Tabellen einlesen</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>class of boat, or boat</source>
        <translation>Bootsklasse oder Boot</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Fassungen</translation>
    </message>
    <message>
        <source>class %1</source>
        <translation>Klasse %1</translation>
    </message>
    <message>
        <source>Choose a line to change it, or an earlier version to see what was asked then.</source>
        <translation>Eine Zeile wählen, um sie zu ändern, oder eine frühere Fassung, um zu sehen, was damals verlangt war.</translation>
    </message>
    <message>
        <source>The register&apos;s sheets are in %1. People&apos;s measures are left out.</source>
        <translation>Die Tabellen des Verzeichnisses liegen in %1. Die Körpermaße der Leute sind weggelassen.</translation>
    </message>
    <message>
        <source>New point…</source>
        <translation>Neuer Prüfpunkt…</translation>
    </message>
    <message>
        <source>Choose the newest version to change anything.</source>
        <translation>Zum Ändern die neueste Fassung wählen.</translation>
    </message>
    <message>
        <source>Choose a point to change it. Maker&apos;s plate and manual decide about pressures.</source>
        <translation>Zum Ändern einen Prüfpunkt wählen. Über Drücke entscheiden Typenschild und Handbuch des Herstellers.</translation>
    </message>
    <message>
        <source>No boat is of this class yet: a check list is a boat&apos;s.</source>
        <translation>Zu dieser Klasse gehört noch kein Boot: Eine Prüfliste gilt für ein Boot.</translation>
    </message>
    <message>
        <source>New line…</source>
        <translation>Neue Zeile…</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>class %1: no boat has it</source>
        <translation>Klasse %1: kein Boot hat sie</translation>
    </message>
</context>
<context>
    <name>app::MissingPage</name>
    <message>
        <source>Begin a stocktake</source>
        <translation>Inventur beginnen</translation>
    </message>
    <message>
        <source>what is missing, longest first</source>
        <translation>was fehlt, am längsten zuerst</translation>
    </message>
    <message>
        <source>how it was lost from sight, oldest first</source>
        <translation>wie es aus den Augen kam, Ältestes zuerst</translation>
    </message>
    <message>
        <source>tag code of what turned up</source>
        <translation>Code dessen, was aufgetaucht ist</translation>
    </message>
    <message>
        <source>scan it, or type its code</source>
        <translation>scannen oder Code tippen</translation>
    </message>
    <message>
        <source>Turned up at</source>
        <translation>Aufgetaucht bei</translation>
    </message>
    <message>
        <source>no stocktake open</source>
        <translation>keine Inventur offen</translation>
    </message>
    <message>
        <source>No stocktake is open to write it into: begin one of the place where it turned up.</source>
        <translation>Keine Inventur ist offen, um es einzutragen: eine für den Ort beginnen, an dem es auftauchte.</translation>
    </message>
    <message>
        <source>Found: %1, at %2. Look whether it is fit for use before it goes back.</source>
        <translation>Gefunden: %1, bei %2. Nachsehen, ob es brauchbar ist, bevor es zurückgeht.</translation>
    </message>
    <message>
        <source>%1 was not missing; it is now seen at %2.</source>
        <translation>%1 fehlte nicht; es ist jetzt bei %2 gesehen.</translation>
    </message>
    <message>
        <source>%1 is not this club&apos;s kit.</source>
        <translation>%1 ist keine Ausrüstung dieses Vereins.</translation>
    </message>
    <message>
        <source>Written off: %1. It counts nowhere from now on; its history stays.</source>
        <translation>Ausgesondert: %1. Es zählt ab jetzt nirgends mehr; der Verlauf bleibt.</translation>
    </message>
</context>
<context>
    <name>app::NetworkRow</name>
    <message>
        <source>address of the camera</source>
        <translation>Adresse der Kamera</translation>
    </message>
    <message>
        <source>rtsp://… or http://…</source>
        <translation>rtsp://… oder http://…</translation>
    </message>
    <message>
        <source>the camera&apos;s user, if it asks for one</source>
        <translation>Benutzer der Kamera, falls sie einen verlangt</translation>
    </message>
    <message>
        <source>user</source>
        <translation>Benutzer</translation>
    </message>
    <message>
        <source>the camera&apos;s password, if it asks for one</source>
        <translation>Passwort der Kamera, falls sie eines verlangt</translation>
    </message>
    <message>
        <source>password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>use this camera</source>
        <translation>Diese Kamera verwenden</translation>
    </message>
    <message>
        <source>This is no address of a camera. It begins with rtsp:// or http:// and stands in the camera&apos;s manual, e.g. rtsp://192.168.1.20/stream1.</source>
        <translation>Das ist keine Adresse einer Kamera. Sie beginnt mit rtsp:// oder http:// und steht in der Anleitung der Kamera, z. B. rtsp://192.168.1.20/stream1.</translation>
    </message>
</context>
<context>
    <name>app::NewClubForm</name>
    <message>
        <source>the club&apos;s name</source>
        <translation>Name des Vereins</translation>
    </message>
    <message>
        <source>where its file goes</source>
        <translation>wohin die Datei kommt</translation>
    </message>
    <message>
        <source>the folder of CSV files</source>
        <translation>der Ordner mit CSV-Dateien</translation>
    </message>
    <message>
        <source>Start this club file</source>
        <translation>Diese Vereinsdatei anlegen</translation>
    </message>
    <message>
        <source>It begins with</source>
        <translation>Sie beginnt mit</translation>
    </message>
    <message>
        <source>a starter: %1</source>
        <translation>Vorlage: %1</translation>
    </message>
    <message>
        <source>our spreadsheet</source>
        <translation>unserer Tabelle</translation>
    </message>
    <message>
        <source>a folder of CSV files</source>
        <translation>einem Ordner mit CSV</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Kit types, sizes, rules and lists are examples, and each rule says so: “example: put your maker&apos;s and your club&apos;s in its place”.</source>
        <translation>Arten, Größen, Regeln und Listen sind Beispiele, und jede Regel sagt es: „example: put your maker&apos;s and your club&apos;s in its place“ (durch Angaben des Herstellers und des Vereins zu ersetzen).</translation>
    </message>
    <message>
        <source>The file is made first; then you choose the spreadsheet and say what its columns mean.</source>
        <translation>Zuerst wird die Datei angelegt; dann wird die Tabelle gewählt und angegeben, was ihre Spalten bedeuten.</translation>
    </message>
    <message>
        <source>Files such as boats.csv and items.csv, as this program writes them. All rows are taken, or there is no file.</source>
        <translation>Dateien wie boats.csv und items.csv, wie dieses Programm sie schreibt. Alle Zeilen werden übernommen, oder es gibt keine Datei.</translation>
    </message>
    <message>
        <source>You write boats, people and kit types yourself.</source>
        <translation>Boote, Leute und Arten werden von Hand eingetragen.</translation>
    </message>
    <message>
        <source>Say where the file goes.</source>
        <translation>Angeben, wohin die Datei kommt.</translation>
    </message>
    <message>
        <source>Choose the folder of CSV files.</source>
        <translation>Den Ordner mit CSV-Dateien wählen.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Ordner wählen…</translation>
    </message>
    <message>
        <source>The file is being made…</source>
        <translation>Die Datei wird angelegt…</translation>
    </message>
</context>
<context>
    <name>app::NewKitPanel</name>
    <message>
        <source>2026-03-14, 2026-03 or 2026</source>
        <translation>2026-03-14, 2026-03 oder 2026</translation>
    </message>
    <message>
        <source>or scan makers&apos; labels, one by one</source>
        <translation>oder Herstelleretiketten scannen</translation>
    </message>
    <message>
        <source>makers&apos; labels scanned, or what was registered</source>
        <translation>gescannte Herstelleretiketten oder was aufgenommen wurde</translation>
    </message>
    <message>
        <source>Kit type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Wem</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hergestellt</translation>
    </message>
    <message>
        <source>First use</source>
        <translation>Erster Gebrauch</translation>
    </message>
    <message>
        <source>Stamped</source>
        <translation>Aufdruck</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>New kit</source>
        <translation>Neue Ausrüstung</translation>
    </message>
    <message>
        <source>which?</source>
        <translation>welche?</translation>
    </message>
    <message>
        <source>nobody&apos;s own</source>
        <translation>niemandem</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>has no sizes</source>
        <translation>ohne Größen</translation>
    </message>
    <message>
        <source>no size</source>
        <translation>ohne Größe</translation>
    </message>
    <message>
        <source>That label is in the list already; it counts once.</source>
        <translation>Dieses Etikett steht schon in der Liste; es zählt einmal.</translation>
    </message>
    <message>
        <source>Label taken: serial %1.</source>
        <translation>Etikett gelesen: Seriennummer %1.</translation>
    </message>
    <message>
        <source>makers&apos; labels</source>
        <translation>Herstelleretiketten</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hergestellt %1</translation>
    </message>
    <message>
        <source>stamped %1</source>
        <translation>Aufdruck %1</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>registered, each with its new tag</source>
        <translation>aufgenommen, jedes mit seinem neuen Etikett</translation>
    </message>
    <message>
        <source>registered</source>
        <translation>aufgenommen</translation>
    </message>
    <message>
        <source>Their tags as PDF…</source>
        <translation>Etiketten als PDF…</translation>
    </message>
</context>
<context>
    <name>app::OutcomeFoot</name>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Save for later</source>
        <translation>Für später sichern</translation>
    </message>
    <message>
        <source>Urgent: launch incomplete…</source>
        <translation>Dringend: unvollständig…</translation>
    </message>
    <message>
        <source>Sign…</source>
        <translation>Unterschreiben…</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Close…</source>
        <translation>Schließen…</translation>
    </message>
    <message>
        <source>Close unsigned, for a reason</source>
        <translation>Ohne Unterschrift schließen, mit Grund</translation>
    </message>
    <message>
        <source>Nothing is recorded in it yet: leave it</source>
        <translation>Darin steht noch nichts: verlassen</translation>
    </message>
</context>
<context>
    <name>app::PageMenu</name>
    <message>
        <source>This &amp;page</source>
        <translation>Diese &amp;Seite</translation>
    </message>
</context>
<context>
    <name>app::PaperButton</name>
    <message>
        <source>Print or save…</source>
        <translation>Ausgeben…</translation>
    </message>
    <message>
        <source>&amp;Print this list…</source>
        <translation>Diese Liste &amp;drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>Save as &amp;CSV…</source>
        <translation>Als &amp;CSV speichern…</translation>
    </message>
    <message>
        <source>Copy as &amp;text</source>
        <translation>Als &amp;Text kopieren</translation>
    </message>
    <message>
        <source>Print a check &amp;list…</source>
        <translation>Prüf&amp;liste drucken…</translation>
    </message>
    <message>
        <source>Save a check list as PDF…</source>
        <translation>Prüfliste als PDF speichern…</translation>
    </message>
    <message>
        <source>Print the &amp;wall card…</source>
        <translation>&amp;Wandkarte drucken…</translation>
    </message>
    <message>
        <source>Save the wall card as PDF…</source>
        <translation>Wandkarte als PDF speichern…</translation>
    </message>
    <message>
        <source>Paper check list and wall card of</source>
        <translation>Prüfliste auf Papier und Wandkarte von</translation>
    </message>
</context>
<context>
    <name>app::PaperDelivery</name>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer.</source>
        <translation>Das Blatt ging an den Drucker.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen.</translation>
    </message>
    <message>
        <source>Copied as text: %1, %2. Paste it into a message.</source>
        <translation>Als Text kopiert: %1, %2. In eine Nachricht einfügen.</translation>
    </message>
</context>
<context>
    <name>app::PeopleBar</name>
    <message>
        <source>driver</source>
        <translation>Bootsführer</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Besatzung</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>crew %1</source>
        <translation>Besatzung %1</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
</context>
<context>
    <name>app::PhotoCamera</name>
    <message>
        <source>Take the picture</source>
        <translation>Bild aufnehmen</translation>
    </message>
    <message>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <source>The camera shows no picture yet.</source>
        <translation>Die Kamera zeigt noch kein Bild.</translation>
    </message>
</context>
<context>
    <name>app::PhotoStrip</name>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>Add a photograph…</source>
        <translation>Foto hinzufügen…</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>photograph, %1</source>
        <translation>Foto, %1</translation>
    </message>
    <message>
        <source>The photograph is not the one that was recorded.</source>
        <translation>Das Foto ist nicht das eingetragene.</translation>
    </message>
    <message>
        <source>The photograph is kept with the record.</source>
        <translation>Das Foto ist beim Protokoll aufbewahrt.</translation>
    </message>
    <message>
        <source>The photographs are kept with the record.</source>
        <translation>Die Fotos sind beim Protokoll aufbewahrt.</translation>
    </message>
    <message>
        <source>take a photograph with the camera</source>
        <translation>ein Foto mit der Kamera aufnehmen</translation>
    </message>
    <message>
        <source>Wrong picture: take it away</source>
        <translation>Falsches Bild: wegnehmen</translation>
    </message>
    <message>
        <source>Press again to take it away</source>
        <translation>Noch einmal drücken: wegnehmen</translation>
    </message>
    <message>
        <source>The photograph is shown here no more. That it was added stays in the record.</source>
        <translation>Das Foto wird hier nicht mehr gezeigt. Dass es hinzugefügt wurde, bleibt im Protokoll.</translation>
    </message>
    <message>
        <source>Take one…</source>
        <translation>Aufnehmen…</translation>
    </message>
</context>
<context>
    <name>app::PictureView</name>
    <message>
        <source>%1 · press anywhere to go back</source>
        <translation>%1 · irgendwo drücken führt zurück</translation>
    </message>
</context>
<context>
    <name>app::PinPanel</name>
    <message>
        <source>the PIN of before</source>
        <translation>die bisherige PIN</translation>
    </message>
    <message>
        <source>the new PIN</source>
        <translation>die neue PIN</translation>
    </message>
    <message>
        <source>the new PIN: 4 to 12 characters</source>
        <translation>die neue PIN: 4 bis 12 Zeichen</translation>
    </message>
    <message>
        <source>the new PIN once more</source>
        <translation>die neue PIN noch einmal</translation>
    </message>
    <message>
        <source>the same once more</source>
        <translation>dieselbe noch einmal</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>A PIN keeps honest people from slips on a machine that several use: with a gear officer&apos;s PIN set, what only gear officers do is asked for it. It is no lock: whoever has the club file can read it. Checks are never held up by it.</source>
        <translation>Eine PIN bewahrt ehrliche Leute vor Versehen an einem Gerät, das mehrere benutzen: Hat ein Gerätewart eine PIN, so wird sie für alles verlangt, was nur Gerätewarte tun. Sie ist kein Schloss: Wer die Vereinsdatei hat, kann sie lesen. Prüfungen hält sie nie auf.</translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation>PIN von %1</translation>
    </message>
    <message>
        <source>There is a PIN. Who knows it types it first; else a gear officer gives theirs.</source>
        <translation>Es gibt eine PIN. Wer sie kennt, trägt sie zuerst ein; sonst gibt ein Gerätewart die eigene.</translation>
    </message>
    <message>
        <source>There is none. From the first PIN of a gear officer on, what only gear officers do is asked for one.</source>
        <translation>Es gibt keine. Mit der ersten PIN eines Gerätewarts wird eine für alles verlangt, was nur Gerätewarte tun.</translation>
    </message>
    <message>
        <source>There is none.</source>
        <translation>Es gibt keine.</translation>
    </message>
    <message>
        <source>Change the PIN</source>
        <translation>PIN ändern</translation>
    </message>
    <message>
        <source>Set the PIN</source>
        <translation>PIN setzen</translation>
    </message>
    <message>
        <source>The two are not the same: type both anew.</source>
        <translation>Die beiden sind nicht gleich: beide neu eintragen.</translation>
    </message>
    <message>
        <source>The PIN of %1 is set.</source>
        <translation>Die PIN von %1 ist gesetzt.</translation>
    </message>
    <message>
        <source>%1 has no PIN any more.</source>
        <translation>%1 hat keine PIN mehr.</translation>
    </message>
    <message>
        <source>Remove the PIN</source>
        <translation>PIN entfernen</translation>
    </message>
</context>
<context>
    <name>app::PrintoutDelivery</name>
    <message>
        <source>The sheet was sent to the printer.</source>
        <translation>Das Blatt ging an den Drucker.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1.</source>
        <translation>Das Blatt ließ sich nicht nach %1 schreiben.</translation>
    </message>
</context>
<context>
    <name>app::ReadyPage</name>
    <message>
        <source>Make a plan</source>
        <translation>Plan machen</translation>
    </message>
    <message>
        <source>Which boats can be made complete with what is here?</source>
        <translation>Welche Boote können mit dem, was da ist, vollständig werden?</translation>
    </message>
    <message>
        <source>a plan is being made</source>
        <translation>ein Plan wird gemacht</translation>
    </message>
    <message>
        <source>boats, with what is short</source>
        <translation>Boote, mit dem, was fehlt</translation>
    </message>
    <message>
        <source>what to carry where; a press ticks it off</source>
        <translation>was wohin zu tragen ist; ein Druck hakt es ab</translation>
    </message>
    <message>
        <source>tag code of what was carried</source>
        <translation>Code dessen, was getragen wurde</translation>
    </message>
    <message>
        <source>scan what you carry, or type its code</source>
        <translation>scannen, was getragen wird, oder Code tippen</translation>
    </message>
    <message>
        <source>with kit at</source>
        <translation>mit Ausrüstung von</translation>
    </message>
    <message>
        <source>Ticks are for whoever carries; what is aboard is recorded by the launch check.</source>
        <translation>Die Haken sind für die, die tragen; was an Bord ist, hält die Auslaufprüfung fest.</translation>
    </message>
    <message>
        <source>every place</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>All is carried. Now do the launch checks.</source>
        <translation>Alles ist getragen. Jetzt die Auslaufprüfungen machen.</translation>
    </message>
    <message>
        <source>%1 of %2 carried.</source>
        <translation>%1 von %2 getragen.</translation>
    </message>
    <message>
        <source>%1 is no item of this club.</source>
        <translation>%1 ist kein Stück dieses Vereins.</translation>
    </message>
    <message>
        <source>%1 is ticked already; it goes to %2.</source>
        <translation>%1 ist schon abgehakt; es geht zu %2.</translation>
    </message>
    <message>
        <source>%1 is not part of this plan: leave it where it is.</source>
        <translation>%1 gehört nicht zu diesem Plan: liegen lassen.</translation>
    </message>
    <message>
        <source>Show the boats</source>
        <translation>Boote zeigen</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Kamera benutzen</translation>
    </message>
    <message>
        <source>Make ready</source>
        <translation>Klarmachen</translation>
    </message>
</context>
<context>
    <name>app::RecordPage</name>
    <message>
        <source>What was aboard</source>
        <translation>Was an Bord war</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Is the record unaltered?</source>
        <translation>Ist das Protokoll unversehrt?</translation>
    </message>
</context>
<context>
    <name>app::RegisterPage</name>
    <message>
        <source>find a row by any of its words</source>
        <translation>eine Zeile nach einem ihrer Wörter suchen</translation>
    </message>
    <message>
        <source>find …</source>
        <translation>suchen …</translation>
    </message>
    <message>
        <source>which rows of the register</source>
        <translation>welche Zeilen des Verzeichnisses</translation>
    </message>
    <message>
        <source>rows of the register</source>
        <translation>Zeilen des Verzeichnisses</translation>
    </message>
    <message>
        <source>None yet. Write the first with “%1”, or import a folder of CSV or a spreadsheet.</source>
        <translation>Noch nichts hier. Das erste mit „%1“ schreiben oder einen Ordner mit CSV oder eine Tabelle einlesen.</translation>
    </message>
    <message>
        <source>Nothing has these words.</source>
        <translation>Nichts enthält diese Wörter.</translation>
    </message>
    <message>
        <source>A new size of: %1</source>
        <translation>Eine neue Größe von: %1</translation>
    </message>
    <message>
        <source>A new life rule of: %1</source>
        <translation>Eine neue Regel von: %1</translation>
    </message>
    <message>
        <source>%1 is no tag of a boat, person or place. Kit is on the page Kit.</source>
        <translation>%1 ist kein Etikett eines Bootes, einer Person oder eines Ortes. Ausrüstung steht auf der Seite Ausrüstung.</translation>
    </message>
    <message>
        <source>PIN…</source>
        <translation>PIN…</translation>
    </message>
    <message>
        <source>Remove rule…</source>
        <translation>Regel entfernen …</translation>
    </message>
    <message>
        <source>%1: removed.</source>
        <translation>%1: entfernt.</translation>
    </message>
    <message>
        <source>New size…</source>
        <translation>Neue Größe…</translation>
    </message>
    <message>
        <source>New rule…</source>
        <translation>Neue Regel…</translation>
    </message>
    <message>
        <source>Rename…</source>
        <translation>Umbenennen…</translation>
    </message>
    <message>
        <source>No longer here…</source>
        <translation>Nicht mehr hier…</translation>
    </message>
    <message>
        <source>New boat…</source>
        <translation>Neues Boot…</translation>
    </message>
    <message>
        <source>New person…</source>
        <translation>Neue Person…</translation>
    </message>
    <message>
        <source>New place…</source>
        <translation>Neuer Ort…</translation>
    </message>
    <message>
        <source>New kit type…</source>
        <translation>Neue Art…</translation>
    </message>
    <message>
        <source>Remove “%1”? Nothing falls due by it any more. If services were recorded by it, it stays: then change it instead.</source>
        <translation>„%1“ entfernen? Danach wird nach ihr nichts mehr fällig. Hat sie schon Prüfnachweise, bleibt sie: Dann stattdessen ändern.</translation>
    </message>
    <message>
        <source>The club’s name…</source>
        <translation>Vereinsname …</translation>
    </message>
    <message>
        <source>Remove “%1”? It goes only while no kit, manifest or rule uses it.</source>
        <translation>„%1“ entfernen? Es geht nur, solange keine Ausrüstung, Packliste oder Regel es verwendet.</translation>
    </message>
    <message>
        <source>Remove size…</source>
        <translation>Größe entfernen …</translation>
    </message>
    <message>
        <source>Remove kit type…</source>
        <translation>Art entfernen …</translation>
    </message>
</context>
<context>
    <name>app::RenamePanel</name>
    <message>
        <source>the new name</source>
        <translation>der neue Name</translation>
    </message>
    <message>
        <source>Keep the name</source>
        <translation>Namen behalten</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>what is renamed</source>
        <translation>was umbenannt wird</translation>
    </message>
    <message>
        <source>What was recorded under the old name stays and is about the same. Signed checks keep the name that they were signed with.</source>
        <translation>Was unter dem alten Namen aufgezeichnet ist, bleibt und gilt demselben. Unterschriebene Prüfungen behalten den Namen, mit dem sie unterschrieben sind.</translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <translation>%1 „%2“</translation>
    </message>
    <message>
        <source>“%1” is called “%2” from now on.</source>
        <translation>„%1“ heißt von nun an „%2“.</translation>
    </message>
    <message>
        <source>The name of the club: it stands on the board and on whatever is printed from now on. What is printed already does not change.</source>
        <translation>Der Name des Vereins: Er steht von nun an auf der Tafel und auf allem, was gedruckt wird. Was schon gedruckt ist, ändert sich nicht.</translation>
    </message>
</context>
<context>
    <name>app::ReplacePage</name>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>to order</source>
        <translation>zu bestellen</translation>
    </message>
    <message>
        <source>late: %1</source>
        <translation>zu spät: %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>again</source>
        <translation>immer wieder</translation>
    </message>
    <message>
        <source>Nothing runs short.</source>
        <translation>Nichts wird knapp.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 Monate</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>what runs short, by order-by day</source>
        <translation>was knapp wird, nach Bestelltag</translation>
    </message>
    <message>
        <source>plan for</source>
        <translation>planen für</translation>
    </message>
    <message>
        <source>confidence</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>confidence that no kit runs short</source>
        <translation>Sicherheit, dass nichts knapp wird</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>order</source>
        <translation>bestellen</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>order %1.%2</source>
        <translation>%1 bestellen.%2</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Cost, %1.</source>
        <translation>Kosten, %1.</translation>
    </message>
    <message>
        <source>There is nothing to plan yet. What each boat must carry is written on the page Manifests, what there is of it on the page Kit.</source>
        <translation>Noch gibt es nichts zu planen. Was jedes Boot mitführen muss, wird auf der Seite Packlisten geschrieben, was davon da ist, auf der Seite Ausrüstung.</translation>
    </message>
    <message>
        <source>Order sheet…</source>
        <translation>Bestellblatt…</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Calendar…</source>
        <translation>Kalender…</translation>
    </message>
    <message>
        <source>Stock, life, arrivals…</source>
        <translation>Bestand, Dauer, Ankunft…</translation>
    </message>
</context>
<context>
    <name>app::ReplaceRowPanel</name>
    <message>
        <source>stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>how long it lasts</source>
        <translation>wie lange es hält</translation>
    </message>
    <message>
        <source>arrived</source>
        <translation>angekommen</translation>
    </message>
    <message>
        <source>%1: %2 in stock, %3 wanted</source>
        <translation>%1: %2 im Bestand, %3 gebraucht</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>There is no item of it yet.</source>
        <translation>Davon gibt es noch kein Stück.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>app::ReplacedStrip</name>
    <message>
        <source>▲ The club file was moved, deleted or replaced by another program. Nothing is recorded any more: open the file that is to be used.</source>
        <translation>▲ Die Vereinsdatei wurde von einem anderen Programm verschoben, gelöscht oder ersetzt. Es wird nichts mehr aufgezeichnet: die Datei öffnen, die gelten soll.</translation>
    </message>
    <message>
        <source>Open a club file…</source>
        <translation>Vereinsdatei öffnen…</translation>
    </message>
</context>
<context>
    <name>app::RowListDelegate</name>
    <message>
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message>
        <source>In %1; no range is given.</source>
        <translation>In %1; kein Bereich ist angegeben.</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>Erlaubt: %1.</translation>
    </message>
    <message>
        <source>▲ %1 is out of range. Allowed: %2. Enter records it all the same, Escape leaves it.</source>
        <translation>▲ %1 liegt außerhalb. Erlaubt: %2. Enter hält es trotzdem fest, Escape lässt es.</translation>
    </message>
</context>
<context>
    <name>app::RowPanel</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Discard changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Not saved: something here is not possible yet.</source>
        <translation>Nicht gespeichert: etwas hier ist noch nicht möglich.</translation>
    </message>
    <message>
        <source>%1 stands so already.</source>
        <translation>%1 steht schon so da.</translation>
    </message>
    <message>
        <source>%1: saved.</source>
        <translation>%1: gespeichert.</translation>
    </message>
</context>
<context>
    <name>app::SetUpPage</name>
    <message>
        <source>%1 of %2 are done, in any order.</source>
        <translation>%1 von %2 erledigt; die Reihenfolge ist frei.</translation>
    </message>
    <message>
        <source>Take it off the board</source>
        <translation>Nicht bei den Booten zeigen</translation>
    </message>
    <message>
        <source>Say it on the board</source>
        <translation>Bei den Booten zeigen</translation>
    </message>
    <message>
        <source>Import a spreadsheet…</source>
        <translation>Tabelle einlesen…</translation>
    </message>
</context>
<context>
    <name>app::SetUpRow</name>
    <message>
        <source>%1: done</source>
        <translation>%1: erledigt</translation>
    </message>
    <message>
        <source>%1: still to do</source>
        <translation>%1: noch zu tun</translation>
    </message>
</context>
<context>
    <name>app::SetUpStrip</name>
    <message>
        <source>Go on setting up</source>
        <translation>Weiter einrichten</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Setting up: %1</source>
        <translation>Einrichten: %1</translation>
    </message>
</context>
<context>
    <name>app::ShedBoard</name>
    <message>
        <source>Launched urgently, kit incomplete: %1</source>
        <translation>Dringend ausgelaufen, Ausrüstung unvollständig: %1</translation>
    </message>
    <message>
        <source>go on with the %1</source>
        <translation>%1 fortsetzen</translation>
    </message>
    <message>
        <source>a boat&apos;s tag code</source>
        <translation>Code eines Bootsetiketts</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Nichts fehlt.</translation>
    </message>
    <message>
        <source>Nothing falls due within %1 days.</source>
        <translation>In den nächsten %1 Tagen wird nichts fällig.</translation>
    </message>
    <message>
        <source>No boats yet. Import a folder of CSV: boats, what each must carry, and the kit.</source>
        <translation>Noch keine Boote. Einen CSV-Ordner einlesen: Boote, was jedes führen muss, und die Ausrüstung.</translation>
    </message>
    <message>
        <source>Import a folder of CSV…</source>
        <translation>CSV-Ordner einlesen…</translation>
    </message>
    <message>
        <source>a boat&apos;s tag</source>
        <translation>Bootsetikett</translation>
    </message>
    <message>
        <source>Back up…</source>
        <translation>Sichern…</translation>
    </message>
    <message>
        <source>▲ The PIN of %1 was taken away by whoever owns the file, %2.</source>
        <translation>▲ Die PIN von %1 wurde von dem weggenommen, dem die Datei gehört, %2.</translation>
    </message>
    <message>
        <source>▲ The PIN of %1 was taken away by whoever owns the file, %2; given as by %3.</source>
        <translation>▲ Die PIN von %1 wurde von dem weggenommen, dem die Datei gehört, %2; eingetragen von %3.</translation>
    </message>
    <message>
        <source>▲ %1 not ready</source>
        <translation>▲ %1 nicht klar</translation>
    </message>
    <message>
        <source>○ out: %1</source>
        <translation>○ draußen: %1</translation>
    </message>
    <message>
        <source>■ %1 kit ready</source>
        <translation>■ %1 ausrüstungsklar</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>show only boats with these letters</source>
        <translation>nur Boote mit diesen Buchstaben zeigen</translation>
    </message>
    <message>
        <source>find a boat</source>
        <translation>Boot suchen</translation>
    </message>
    <message>
        <source>No boat has “%1” in what is said of it.</source>
        <translation>Bei keinem Boot steht „%1“.</translation>
    </message>
    <message>
        <source>%1 of %2 boats</source>
        <translation>%1 von %2 Booten</translation>
    </message>
</context>
<context>
    <name>app::SheetQuestions</name>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>the day first, then the month</source>
        <translation>zuerst den Tag, dann den Monat</translation>
    </message>
    <message>
        <source>the month first, then the day</source>
        <translation>zuerst den Monat, dann den Tag</translation>
    </message>
    <message>
        <source>Days such as %1 have</source>
        <translation>Tage wie %1 haben</translation>
    </message>
    <message>
        <source>“%1” as %2 means</source>
        <translation>„%1“ als %2 heißt</translation>
    </message>
    <message>
        <source>nothing: leave the cell empty</source>
        <translation>nichts: die Zelle leer lassen</translation>
    </message>
    <message>
        <source>The rows are read by what is chosen here.</source>
        <translation>Die Zeilen werden nach dem gelesen, was hier gewählt ist.</translation>
    </message>
    <message>
        <source>Words this club has told</source>
        <translation>Wörter, die dieser Verein erklärt hat</translation>
    </message>
    <message>
        <source>“%1” as %2, %3, means</source>
        <translation>„%1“ als %2, %3, bedeutet</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>forget what “%1” means</source>
        <translation>vergessen, was „%1“ bedeutet</translation>
    </message>
</context>
<context>
    <name>app::SheetTableModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Why it is refused</source>
        <translation>Warum abgelehnt</translation>
    </message>
    <message>
        <source>Is it meant so?</source>
        <translation>Ist das so gemeint?</translation>
    </message>
</context>
<context>
    <name>app::SignPanel</name>
    <message>
        <source>Why launch with kit incomplete?</source>
        <translation>Warum mit unvollständiger Ausrüstung auslaufen?</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>unterschrieben von</translation>
    </message>
    <message>
        <source>reason for launching with kit incomplete</source>
        <translation>Grund für das Auslaufen mit unvollständiger Ausrüstung</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Es unterschreibt</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
    <message>
        <source>Before you sign the launch check</source>
        <translation>Vor der Unterschrift zum Auslaufen</translation>
    </message>
    <message>
        <source>Before you sign the return check</source>
        <translation>Vor der Unterschrift zur Rückkehr</translation>
    </message>
    <message>
        <source>Sign: kit incomplete, urgent</source>
        <translation>Unvollständig unterschreiben</translation>
    </message>
    <message>
        <source>Sign: kit not all back</source>
        <translation>Unterschreiben: nicht alles zurück</translation>
    </message>
    <message>
        <source>Sign: kit complete, with remarks</source>
        <translation>Unterschreiben: mit Hinweisen</translation>
    </message>
    <message>
        <source>Sign: kit complete</source>
        <translation>Unterschreiben: vollständig</translation>
    </message>
    <message>
        <source>Sign: still something to do</source>
        <translation>Unterschreiben: noch etwas offen</translation>
    </message>
    <message>
        <source>Sign: all back</source>
        <translation>Unterschreiben: alles zurück</translation>
    </message>
    <message>
        <source>Sign: all back, with remarks</source>
        <translation>Unterschreiben: mit Hinweisen</translation>
    </message>
    <message>
        <source>Press once more to sign all the same.</source>
        <translation>Noch einmal drücken, um trotzdem zu unterschreiben.</translation>
    </message>
    <message>
        <source>Sign all the same</source>
        <translation>Trotzdem unterschreiben</translation>
    </message>
    <message>
        <source>Without one: %1.</source>
        <translation>Ohne: %1.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>app::SignedPanel</name>
    <message>
        <source>Back to the boats</source>
        <translation>Zurück zu den Booten</translation>
    </message>
    <message>
        <source>Print the sheet…</source>
        <translation>Blatt drucken…</translation>
    </message>
    <message>
        <source>Save the sheet as PDF…</source>
        <translation>Blatt als PDF speichern…</translation>
    </message>
</context>
<context>
    <name>app::Signing</name>
    <message>
        <source>Signed by %1, %2.</source>
        <translation>Unterschrieben von %1, %2.</translation>
    </message>
    <message>
        <source>Launched urgently: %1</source>
        <translation>Dringend ausgelaufen: %1</translation>
    </message>
</context>
<context>
    <name>app::SpreadsheetPage</name>
    <message>
        <source>Next refused row</source>
        <translation>Nächste abgelehnte Zeile</translation>
    </message>
    <message>
        <source>Import all rows</source>
        <translation>Alle Zeilen einlesen</translation>
    </message>
    <message>
        <source>the fullest</source>
        <translation>das vollste</translation>
    </message>
    <message>
        <source>Nothing would change: all of it is in the register already.</source>
        <translation>Nichts würde sich ändern: Alles steht schon im Verzeichnis.</translation>
    </message>
    <message>
        <source>Imported. %1</source>
        <translation>Eingelesen. %1</translation>
    </message>
    <message>
        <source>An .xlsx, .ods, .csv or .tsv file, such as the club&apos;s list of kit.</source>
        <translation>Eine Datei .xlsx, .ods, .csv oder .tsv, etwa die Ausrüstungsliste des Vereins.</translation>
    </message>
    <message>
        <source>Each row is</source>
        <translation>Jede Zeile ist</translation>
    </message>
    <message>
        <source>on the sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Make missing:</source>
        <translation>Fehlendes anlegen:</translation>
    </message>
    <message>
        <source>make missing %1</source>
        <translation>fehlende anlegen: %1</translation>
    </message>
    <message>
        <source>the rows of the spreadsheet</source>
        <translation>die Zeilen der Tabelle</translation>
    </message>
    <message>
        <source>What “%1” means is asked again.</source>
        <translation>Was „%1“ bedeutet, wird wieder gefragt.</translation>
    </message>
    <message>
        <source>Choose a spreadsheet…</source>
        <translation>Tabelle wählen…</translation>
    </message>
    <message>
        <source>%1 is being read…</source>
        <translation>%1 wird gelesen…</translation>
    </message>
    <message>
        <source>The rows are being imported…</source>
        <translation>Die Zeilen werden eingelesen…</translation>
    </message>
    <message>
        <source>The rows are being looked at…</source>
        <translation>Die Zeilen werden angesehen…</translation>
    </message>
    <message>
        <source>Next such row</source>
        <translation>Nächste solche Zeile</translation>
    </message>
</context>
<context>
    <name>app::StockPlot</name>
    <message>
        <source>stock and what is wanted, month by month</source>
        <translation>Bestand und was gebraucht wird, Monat für Monat</translation>
    </message>
    <message>
        <source>items</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>%1 in stock, %2 wanted; %3</source>
        <translation>%1 im Bestand, %2 gebraucht; %3</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gebraucht %1</translation>
    </message>
    <message>
        <source>stock %1</source>
        <translation>Bestand %1</translation>
    </message>
    <message>
        <source>order by %1</source>
        <translation>bestellen bis %1</translation>
    </message>
</context>
<context>
    <name>app::StocktakePage</name>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Take back the last</source>
        <translation>Letzten zurücknehmen</translation>
    </message>
    <message>
        <source>Choose a place. Its kit is listed, and ticked off as its tags are shown.</source>
        <translation>Einen Ort wählen. Seine Ausrüstung wird aufgelistet und abgehakt, sobald ihre Etiketten gezeigt werden.</translation>
    </message>
    <message>
        <source>kit of this place</source>
        <translation>Ausrüstung dieses Orts</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Signing marks as missing what the register has here and nobody has shown. A scan shows that the tag was here, not that the thing works.</source>
        <translation>Die Unterschrift vermerkt als fehlend, was laut Verzeichnis hier ist und niemand gezeigt hat. Ein Scan zeigt, dass das Etikett hier war, nicht, dass das Teil funktioniert.</translation>
    </message>
    <message>
        <source>which place?</source>
        <translation>welcher Ort?</translation>
    </message>
    <message>
        <source>choose a name</source>
        <translation>Namen wählen</translation>
    </message>
    <message>
        <source>Choose the place first, then show its kit.</source>
        <translation>Erst den Ort wählen, dann seine Ausrüstung zeigen.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Sign: %1 missing</source>
        <translation>Unterschreiben: %1 fehlt</translation>
    </message>
    <message>
        <source>Sign: all found</source>
        <translation>Unterschreiben: alles gefunden</translation>
    </message>
    <message>
        <source>%1: signed by %2. %3 marked missing.</source>
        <translation>%1: unterschrieben von %2. %3 als fehlend vermerkt.</translation>
    </message>
    <message>
        <source>%1: signed by %2. Everything was found.</source>
        <translation>%1: unterschrieben von %2. Alles wurde gefunden.</translation>
    </message>
    <message>
        <source>See the page Missing for whom to ask.</source>
        <translation>Auf der Seite Fehlt steht, wen man fragt.</translation>
    </message>
    <message>
        <source>Choose first who signs.</source>
        <translation>Erst wählen, wer unterschreibt.</translation>
    </message>
    <message>
        <source>how many will be missing</source>
        <translation>wie viele fehlen werden</translation>
    </message>
    <message>
        <source>Nothing was shown. Signed like this, %1 would be missing: type that number first.</source>
        <translation>Nichts wurde gezeigt. So unterschrieben würde fehlen: %1. Erst diese Zahl tippen.</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Stocktake</source>
        <translation>Inventur</translation>
    </message>
</context>
<context>
    <name>app::TagRuler</name>
    <message>
        <source>a tag as printed: the symbol is %1 mm wide, with its white border %2 mm</source>
        <translation>ein Etikett wie gedruckt: das Symbol ist %1 mm breit, mit weißem Rand %2 mm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
</context>
<context>
    <name>app::TagsPage</name>
    <message>
        <source>labels %1 × %2 mm, %3 on A4</source>
        <translation>Etiketten %1 × %2 mm, %3 auf A4</translation>
    </message>
    <message>
        <source>control tags too</source>
        <translation>auch Steueretiketten</translation>
    </message>
    <message>
        <source>A4, to be cut</source>
        <translation>A4, zum Schneiden</translation>
    </message>
    <message>
        <source>tags to print; a press leaves one out</source>
        <translation>zu druckende Etiketten; ein Druck lässt eins aus</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>boat, place or person</source>
        <translation>Boot, Ort oder Person</translation>
    </message>
    <message>
        <source>kit type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Take all</source>
        <translation>Alle nehmen</translation>
    </message>
    <message>
        <source>Take none</source>
        <translation>Keins nehmen</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>symbol</source>
        <translation>Symbol</translation>
    </message>
    <message>
        <source>Not the printed size. Print at 100 %, then measure the symbol with a ruler: a printer that fits to the page makes it smaller.</source>
        <translation>Nicht die gedruckte Größe. Mit 100 % drucken, dann das Symbol mit dem Lineal messen: Ein Drucker, der an die Seite anpasst, macht es kleiner.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>No tag is chosen.</source>
        <translation>Kein Etikett ist gewählt.</translation>
    </message>
    <message>
        <source>%1, each symbol %2 mm wide.</source>
        <translation>%1, jedes Symbol %2 mm breit.</translation>
    </message>
    <message>
        <source>tags.pdf</source>
        <translation>etiketten.pdf</translation>
    </message>
    <message>
        <source>The sheets are being made.</source>
        <translation>Die Blätter werden gemacht.</translation>
    </message>
    <message>
        <source>Saved: %1, %2</source>
        <translation>Gespeichert: %1, %2</translation>
    </message>
    <message>
        <source>Save the sheets as PDF…</source>
        <translation>Blätter als PDF speichern…</translation>
    </message>
    <message>
        <source>Only those wearing out</source>
        <translation>Nur die abgenutzten</translation>
    </message>
</context>
<context>
    <name>app::TripPanel</name>
    <message>
        <source>Write it into the log</source>
        <translation>Ins Logbuch schreiben</translation>
    </message>
    <message>
        <source>Back to the check</source>
        <translation>Zurück zur Prüfung</translation>
    </message>
    <message>
        <source>left</source>
        <translation>ausgelaufen</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>engine hours</source>
        <translation>Motorstunden</translation>
    </message>
    <message>
        <source>launches</source>
        <translation>Wasserungen</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>used, left, or filled up</source>
        <translation>verbraucht, übrig, getankt</translation>
    </message>
    <message>
        <source>incidents</source>
        <translation>Vorfälle</translation>
    </message>
    <message>
        <source>what happened, in a sentence</source>
        <translation>was passiert ist, in einem Satz</translation>
    </message>
    <message>
        <source>The trip</source>
        <translation>Die Fahrt</translation>
    </message>
    <message>
        <source>Nobody is named aboard.</source>
        <translation>Niemand ist an Bord benannt.</translation>
    </message>
    <message>
        <source>Aboard: %1.</source>
        <translation>An Bord: %1.</translation>
    </message>
    <message>
        <source>Write the time like 06:31.</source>
        <translation>Zeit so schreiben: 06:31.</translation>
    </message>
    <message>
        <source>Write the engine hours as a number, like 0.7.</source>
        <translation>Motorstunden als Zahl schreiben, etwa 0,7.</translation>
    </message>
    <message>
        <source>Write how often the boat was launched, as a whole number.</source>
        <translation>Als ganze Zahl schreiben, wie oft das Boot zu Wasser ging.</translation>
    </message>
    <message>
        <source>like 06:31</source>
        <translation>etwa 06:31</translation>
    </message>
    <message>
        <source>like 07:12</source>
        <translation>etwa 07:12</translation>
    </message>
    <message>
        <source>like 0.7</source>
        <translation>etwa 0,7</translation>
    </message>
</context>
<context>
    <name>app::UnlockStrip</name>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>This is a gear officer&apos;s to do: it needs a PIN, once for ten minutes of work.</source>
        <translation>Das ist Sache eines Gerätewarts: Es braucht eine PIN, einmal für zehn Minuten Arbeit.</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
    <message>
        <source>This club asks for the PIN of whoever signs and has one.</source>
        <translation>Dieser Verein verlangt die PIN von allen, die unterschreiben und eine haben.</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Too many wrong PINs were given for %1: wait %2.</source>
        <translation>Für %1 wurden zu viele falsche PINs eingegeben: %2 warten.</translation>
    </message>
    <message>
        <source>It can be tried again.</source>
        <translation>Es kann wieder versucht werden.</translation>
    </message>
    <message>
        <source>PIN of</source>
        <translation>PIN von</translation>
    </message>
    <message>
        <source>Restoring this backup is a gear officer&apos;s to do: it needs the PIN of one.</source>
        <translation>Diese Sicherung zurückzuspielen ist Sache des Gerätewarts: sie braucht die PIN von einem.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Zurückspielen</translation>
    </message>
</context>
<context>
    <name>app::VerifyPanel</name>
    <message>
        <source>Check the record</source>
        <translation>Protokoll prüfen</translation>
    </message>
    <message>
        <source>the record is being checked</source>
        <translation>das Protokoll wird geprüft</translation>
    </message>
    <message>
        <source>what does not agree</source>
        <translation>was nicht stimmt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>No fault was found in the record: %1.</source>
        <translation>Im Protokoll fand sich kein Fehler: %1.</translation>
    </message>
    <message>
        <source>The record is damaged: %1. It has %2.</source>
        <translation>Das Protokoll ist beschädigt: %1. Es hat %2.</translation>
    </message>
    <message>
        <source>look</source>
        <translation>hinsehen</translation>
    </message>
    <message>
        <source>The newest hash, to write down on paper: %1</source>
        <translation>Die neueste Prüfsumme, zum Aufschreiben auf Papier: %1</translation>
    </message>
    <message>
        <source>Each line of the record carries the hash of the line before it. This checks that the chain holds, that the tables say what the record says, and that the file is sound. It does not show that what people wrote was true.</source>
        <translation>Jede Zeile des Protokolls trägt die Prüfsumme der vorigen. Hier wird geprüft, dass die Kette hält, dass die Tabellen sagen, was das Protokoll sagt, und dass die Datei unversehrt ist. Es zeigt nicht, dass wahr ist, was Leute geschrieben haben.</translation>
    </message>
    <message>
        <source> Its photographs weigh %1 kB in the file.</source>
        <translation> Die Fotos machen %1 kB der Datei aus.</translation>
    </message>
</context>
<context>
    <name>app::ViewMenu</name>
    <message>
        <source>&amp;Sunlight</source>
        <translation>&amp;Sonne</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Ganzer Bildschirm</translation>
    </message>
    <message>
        <source>Reduce &amp;motion</source>
        <translation>Weniger &amp;Bewegung</translation>
    </message>
    <message>
        <source>&amp;Louder</source>
        <translation>&amp;Lauter</translation>
    </message>
    <message>
        <source>&amp;Quieter, then off</source>
        <translation>L&amp;eiser, dann aus</translation>
    </message>
</context>
<context>
    <name>app::WelcomePage</name>
    <message>
        <source>Open the club&apos;s file…</source>
        <translation>Vereinsdatei öffnen…</translation>
    </message>
    <message>
        <source>No club file is open.</source>
        <translation>Keine Vereinsdatei ist offen.</translation>
    </message>
    <message>
        <source>One file holds a club&apos;s boats, kit and record.</source>
        <translation>Eine Datei enthält Boote, Ausrüstung und Protokoll eines Vereins.</translation>
    </message>
    <message>
        <source>Or start a new club file</source>
        <translation>Oder eine neue Vereinsdatei anlegen</translation>
    </message>
    <message>
        <source>Back to the boats</source>
        <translation>Zurück zu den Booten</translation>
    </message>
    <message>
        <source>“%1” is open until another file is.</source>
        <translation>„%1“ ist offen, bis eine andere Datei geöffnet wird.</translation>
    </message>
</context>
<context>
    <name>app::WriteOffChoice</name>
    <message>
        <source>Write it off</source>
        <translation>Aussondern</translation>
    </message>
    <message>
        <source>why it is written off</source>
        <translation>warum es ausgesondert wird</translation>
    </message>
    <message>
        <source>why?</source>
        <translation>warum?</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Write it off as %1? It counts nowhere from then on.</source>
        <translation>Aussondern, Grund: %1? Es zählt dann nirgends mehr.</translation>
    </message>
    <message>
        <source>Yes, write it off</source>
        <translation>Ja, aussondern</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>The kit of a club&apos;s rescue boats: launch checks, return checks, the shed board.</source>
        <translation>Die Ausrüstung der Rettungsboote eines Vereins: Auslaufprüfung, Rückkehrprüfung, Bootsübersicht.</translation>
    </message>
    <message>
        <source>sun, light or dark</source>
        <translation>sun (Sonne), light (hell) oder dark (dunkel)</translation>
    </message>
    <message>
        <source>do not start a camera</source>
        <translation>keine Kamera starten</translation>
    </message>
    <message>
        <source>write pictures of the window to a folder and end</source>
        <translation>Bilder des Fensters in einen Ordner schreiben und beenden</translation>
    </message>
    <message>
        <source>the club file</source>
        <translation>die Vereinsdatei</translation>
    </message>
    <message>
        <source>en or de, this time only</source>
        <translation>en oder de, nur für dieses Mal</translation>
    </message>
</context>
</TS>
