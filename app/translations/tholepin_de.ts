<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
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
        <source>A date printed on the thing prevails over one that was computed.</source>
        <translation>Ein aufgedrucktes Datum geht einem berechneten vor.</translation>
    </message>
    <message>
        <source>Fix no tag where it hides a label, a seam, a valve or a moving part, or where glue harms the material: the maker&apos;s instructions prevail.</source>
        <translation>Kein Etikett dorthin kleben, wo es eine Aufschrift, eine Naht, ein Ventil oder ein bewegliches Teil verdeckt oder wo Kleber dem Material schadet: Die Angaben des Herstellers gehen vor.</translation>
    </message>
    <message>
        <source>The maker&apos;s instructions, local rules and the person in charge prevail.</source>
        <translation>Herstellerangaben, örtliche Regeln und die verantwortliche Person gehen vor.</translation>
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
        <source>whose it is not checked</source>
        <translation>Besitz nicht geprüft</translation>
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
        <source>about %1 kPa afloat</source>
        <translation>etwa %1 kPa im Wasser</translation>
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
</context>
<context>
    <name>CheckSheet</name>
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
        <translation>Aufzeichnung %1 · %2</translation>
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
        <translation>offener Bucheintrag: %1</translation>
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
        <translation>Einsatz: %1</translation>
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
        <translation>erfasst %1, seither kein Nachweis</translation>
    </message>
    <message>
        <source>last recorded %1</source>
        <translation>zuletzt nachgewiesen %1</translation>
    </message>
    <message>
        <source>%1 launches since the last record, the limit is %2</source>
        <translation>%1 Einsätze seit dem letzten Nachweis, Grenze %2</translation>
    </message>
    <message>
        <source>%1 hours run since the last record, the limit is %2</source>
        <translation>%1 Stunden seit dem letzten Nachweis, Grenze %2</translation>
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
        <translation>%1 gehört niemandem an Bord: Jeder nimmt das eigene.</translation>
    </message>
    <message>
        <source>%1 belongs to %2, who is not named on board: each takes their own.</source>
        <translation>%1 gehört %2, nicht an Bord: Jeder nimmt das eigene.</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>%1 is written off%2%3: take it out of the boat.</source>
        <translation>%1 ist ausgesondert%2%3: aus dem Boot nehmen.</translation>
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
        <source>the point “%1”: %2 is inside the maker&apos;s range, but about %3%4 afloat is %5 (a first estimate); measure again on the water.</source>
        <translation>Prüfpunkt „%1“: %2 liegt im Bereich des Herstellers, aber etwa %3%4 im Wasser liegt %5 (erste Schätzung); auf dem Wasser nachmessen.</translation>
    </message>
    <message>
        <source>the point “%1”: %2 is %3; put it right and record it again.</source>
        <translation>Prüfpunkt „%1“: %2 liegt %3; in Ordnung bringen und neu eintragen.</translation>
    </message>
    <message>
        <source>the boat&apos;s log</source>
        <translation>das Bootsbuch</translation>
    </message>
    <message>
        <source>the log of %1</source>
        <translation>das Buch von %1</translation>
    </message>
    <message>
        <source>%1 has an open entry%2: “%3”; see to it and close it.</source>
        <translation>%1 hat einen offenen Eintrag%2: „%3“; erledigen und schließen.</translation>
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
        <translation>%1 ist mehr, als die Bootsliste verlangt: herausnehmen.</translation>
    </message>
    <message>
        <source>%1 is more than this boat&apos;s list asks for: see that it is meant to be here.</source>
        <translation>%1 ist mehr, als die Bootsliste verlangt: klären, ob es hierher gehört.</translation>
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
        <translation>%1 steht nicht im Verzeichnis und zählt deshalb nicht: erfassen lassen.</translation>
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
        <translation>%1 ist kein Etikett für diesen Check.</translation>
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
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>1 %1</source>
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
        <source>passed on %1</source>
        <translation>abgelaufen am %1</translation>
    </message>
    <message>
        <source>passed on %1, within tolerance</source>
        <translation>abgelaufen am %1, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>soon: %1</source>
        <translation>bald: %1</translation>
    </message>
    <message>
        <source>later: %1</source>
        <translation>später: %1</translation>
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
        <source>it holds no picture and no video</source>
        <translation>darin ist kein Bild und kein Video</translation>
    </message>
    <message>
        <source>it is neither a picture nor a video that can be read here</source>
        <translation>weder ein Bild noch ein Video, das hier gelesen werden kann</translation>
    </message>
    <message>
        <source>the picture or video is damaged</source>
        <translation>Bild oder Video ist beschädigt</translation>
    </message>
    <message>
        <source>the picture is too big</source>
        <translation>das Bild ist zu groß</translation>
    </message>
    <message>
        <source>look at the path</source>
        <translation>Pfad prüfen</translation>
    </message>
    <message>
        <source>look at who may read it</source>
        <translation>Leserechte prüfen</translation>
    </message>
    <message>
        <source>put the pictures there first</source>
        <translation>erst Bilder dort ablegen</translation>
    </message>
    <message>
        <source>save it smaller</source>
        <translation>kleiner speichern</translation>
    </message>
    <message>
        <source>take the picture again, as JPEG or PNG</source>
        <translation>noch einmal aufnehmen, als JPEG oder PNG</translation>
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
        <source>rescue ready, checked%1</source>
        <translation>einsatzklar, geprüft%1</translation>
    </message>
    <message>
        <source>out, launch signed%1</source>
        <translation>draußen, Auslaufen unterschrieben%1</translation>
    </message>
    <message>
        <source>not ready; last check signed%1</source>
        <translation>nicht klar; letzter Check unterschrieben%1</translation>
    </message>
    <message>
        <source>not ready</source>
        <translation>nicht klar</translation>
    </message>
    <message>
        <source>No check of this boat has been signed yet: do a launch check.</source>
        <translation>Für dieses Boot ist noch kein Check unterschrieben: Auslaufcheck machen.</translation>
    </message>
    <message>
        <source>A check was begun and not signed: go on with it.</source>
        <translation>Ein Check wurde begonnen und nicht unterschrieben: weitermachen.</translation>
    </message>
    <message>
        <source>The %1 has been marked missing since the last check: find it, or bring another.</source>
        <translation>%1 gilt seit dem letzten Check als fehlend: suchen oder ein anderes holen.</translation>
    </message>
    <message>
        <source>The %1 has been withdrawn since the last check: bring another.</source>
        <translation>%1 ist seit dem letzten Check gesperrt: ein anderes holen.</translation>
    </message>
    <message>
        <source>The %1 has been seen at %2 since the last check: bring it back.</source>
        <translation>%1 wurde seit dem letzten Check bei %2 gesehen: zurückholen.</translation>
    </message>
    <message>
        <source>The %1 has fallen due since the last check: see the due list.</source>
        <translation>%1 ist seit dem letzten Check fällig geworden: siehe Fälligkeiten.</translation>
    </message>
    <message>
        <source>A log entry is open: read it, and close it when it is mended.</source>
        <translation>Ein Bucheintrag ist offen: lesen und schließen, wenn er erledigt ist.</translation>
    </message>
    <message>
        <source>The last check was signed with something short: do another.</source>
        <translation>Beim letzten Check fehlte etwas: noch einen machen.</translation>
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
        <translation>Auslaufcheck</translation>
    </message>
    <message>
        <source>return check</source>
        <translation>Rückkehrcheck</translation>
    </message>
    <message>
        <source>serviceable</source>
        <translation>in Ordnung</translation>
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
        <translation>Rückkehrcheck nicht fertig</translation>
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
        <source>Nobody&apos;s own.</source>
        <translation>Gehört niemandem.</translation>
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
        <translation>Mehr, als die Bootsliste verlangt.</translation>
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
        <translation>Buch: %1</translation>
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
            <numerusform>%n Bucheintrag offen</numerusform>
            <numerusform>%n Bucheinträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n log entries open</source>
        <translation>
            <numerusform>%n Bucheintrag offen</numerusform>
            <numerusform>%n Bucheinträge offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Kit complete, with %n remark</source>
        <translation>
            <numerusform>Ausrüstung vollständig, %n Bemerkung</numerusform>
            <numerusform>Ausrüstung vollständig, %n Bemerkungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Kit complete, with %n remarks</source>
        <translation>
            <numerusform>Ausrüstung vollständig, %n Bemerkung</numerusform>
            <numerusform>Ausrüstung vollständig, %n Bemerkungen</numerusform>
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
        <source>%n date due or passed within 30 days</source>
        <translation>
            <numerusform>%n Termin in 30 Tagen fällig oder überschritten</numerusform>
            <numerusform>%n Termine in 30 Tagen fällig oder überschritten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dates due or passed within 30 days</source>
        <translation>
            <numerusform>%n Termin in 30 Tagen fällig oder überschritten</numerusform>
            <numerusform>%n Termine in 30 Tagen fällig oder überschritten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more, in the boat&apos;s log</source>
        <translation>
            <numerusform>und %n weiterer im Bootsbuch</numerusform>
            <numerusform>und %n weitere im Bootsbuch</numerusform>
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
            <numerusform>Alles zurück, %n Bemerkung</numerusform>
            <numerusform>Alles zurück, %n Bemerkungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Everything is back, with %n remarks</source>
        <translation>
            <numerusform>Alles zurück, %n Bemerkung</numerusform>
            <numerusform>Alles zurück, %n Bemerkungen</numerusform>
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
        <source>type a code, then Enter</source>
        <translation>Code tippen, Enter</translation>
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
</context>
<context>
    <name>app::CameraView</name>
    <message>
        <source>camera picture</source>
        <translation>Kamerabild</translation>
    </message>
</context>
<context>
    <name>app::CheckLists</name>
    <message>
        <source>kit and points of this check</source>
        <translation>Ausrüstung und Prüfpunkte dieses Checks</translation>
    </message>
    <message>
        <source>points of this check</source>
        <translation>Prüfpunkte dieses Checks</translation>
    </message>
</context>
<context>
    <name>app::CheckPage</name>
    <message>
        <source>%1 running</source>
        <translation>%1 läuft</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>%1, begun %2</source>
        <translation>%1, begonnen %2</translation>
    </message>
    <message>
        <source>Scan the damaged thing first, then the tag for damage.</source>
        <translation>Erst das beschädigte Teil scannen, dann das Etikett für Schäden.</translation>
    </message>
    <message>
        <source>Damaged: shown by control tag at the %1.</source>
        <translation>Beschädigt: mit Steueretikett gezeigt beim %1.</translation>
    </message>
    <message>
        <source>Say first who signs and, with short kit, why.</source>
        <translation>Erst sagen, wer unterschreibt und, wenn etwas fehlt, warum.</translation>
    </message>
    <message>
        <source>No timed point is open.</source>
        <translation>Kein Prüfpunkt mit Uhr ist offen.</translation>
    </message>
    <message>
        <source>%1 signs. Show the tag for finishing again.</source>
        <translation>%1 unterschreibt. Das Etikett für „fertig“ noch einmal zeigen.</translation>
    </message>
    <message>
        <source>That tag is nobody&apos;s in this club.</source>
        <translation>Dieses Etikett gehört niemandem im Verein.</translation>
    </message>
    <message>
        <source>Show the tag again to sign, or first the tag of who signs.</source>
        <translation>Zum Unterschreiben noch einmal zeigen, oder erst das Etikett der Person, die unterschreibt.</translation>
    </message>
    <message>
        <source>Trip: %1</source>
        <translation>Einsatz: %1</translation>
    </message>
    <message>
        <source>Write the trip into the log…</source>
        <translation>Einsatz ins Buch schreiben…</translation>
    </message>
</context>
<context>
    <name>app::CheckRowDelegate</name>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
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
        <translation>Zurück zum Check</translation>
    </message>
</context>
<context>
    <name>app::LogPanel</name>
    <message>
        <source>the boat&apos;s log</source>
        <translation>das Bootsbuch</translation>
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
        <translation>Bootsbuch: nichts offen.</translation>
    </message>
    <message>
        <source>The boat&apos;s log: %1.</source>
        <translation>Bootsbuch: %1.</translation>
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
        <translation>Bootsbuch zeigen</translation>
    </message>
    <message>
        <source>I have read the boat&apos;s log</source>
        <translation>Ich habe das Bootsbuch gelesen</translation>
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
        <source>Ch&amp;eck</source>
        <translation>&amp;Check</translation>
    </message>
    <message>
        <source>&amp;Launch check of this boat</source>
        <translation>&amp;Auslaufcheck dieses Bootes</translation>
    </message>
    <message>
        <source>&amp;Return check of this boat</source>
        <translation>&amp;Rückkehrcheck dieses Bootes</translation>
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
        <source>&amp;Undo the last scan</source>
        <translation>Letzten Scan &amp;zurücknehmen</translation>
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
        <source>Start or stop the &amp;clock</source>
        <translation>U&amp;hr starten oder anhalten</translation>
    </message>
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
        <source>&amp;Mirror the picture</source>
        <translation>Bild s&amp;piegeln</translation>
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
        <source>%1 · Tholepin</source>
        <translation>%1 · Tholepin</translation>
    </message>
    <message>
        <source>%1 is no boat&apos;s tag. Choose the boat first, then scan its kit.</source>
        <translation>%1 ist kein Bootsetikett. Erst das Boot wählen, dann die Ausrüstung scannen.</translation>
    </message>
    <message>
        <source>Take this line&apos;s scan &amp;back</source>
        <translation>Scan dieser Zeile zurückneh&amp;men</translation>
    </message>
    <message>
        <source>The &amp;trip…</source>
        <translation>&amp;Einsatz…</translation>
    </message>
    <message>
        <source>&amp;Gear officer</source>
        <translation>&amp;Gerätewart</translation>
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
        <source>Urgent: launch short…</source>
        <translation>Dringend: so auslaufen…</translation>
    </message>
    <message>
        <source>Sign…</source>
        <translation>Unterschreiben…</translation>
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
    <name>app::ShedBoard</name>
    <message>
        <source>Launched urgent, with short kit: %1</source>
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
</context>
<context>
    <name>app::SheetDelivery</name>
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
    <name>app::SignPanel</name>
    <message>
        <source>Why launch with short kit?</source>
        <translation>Warum unvollständig auslaufen?</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>unterschrieben von</translation>
    </message>
    <message>
        <source>reason for launching with short kit</source>
        <translation>Grund für das Auslaufen mit unvollständiger Ausrüstung</translation>
    </message>
    <message>
        <source>Back to the check</source>
        <translation>Zurück zum Check</translation>
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
        <translation>Unterschreiben: unvollständig, dringend</translation>
    </message>
    <message>
        <source>Sign: kit not all back</source>
        <translation>Unterschreiben: nicht alles zurück</translation>
    </message>
    <message>
        <source>Sign: kit complete, with remarks</source>
        <translation>Unterschreiben: vollständig, mit Bemerkungen</translation>
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
        <translation>Unterschreiben: alles zurück, mit Bemerkungen</translation>
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
        <source>Launched urgent: %1</source>
        <translation>Dringend ausgelaufen: %1</translation>
    </message>
</context>
<context>
    <name>app::TripPanel</name>
    <message>
        <source>Write it into the log</source>
        <translation>Ins Buch schreiben</translation>
    </message>
    <message>
        <source>Back to the check</source>
        <translation>Zurück zum Check</translation>
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
        <translation>verbraucht, übrig oder nachgetankt</translation>
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
        <translation>Der Einsatz</translation>
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
        <source>Start a new club file…</source>
        <translation>Neue Vereinsdatei…</translation>
    </message>
    <message>
        <source>Open the club&apos;s file…</source>
        <translation>Vereinsdatei öffnen…</translation>
    </message>
    <message>
        <source>the club&apos;s name</source>
        <translation>Name des Vereins</translation>
    </message>
    <message>
        <source>No club file is open.</source>
        <translation>Keine Vereinsdatei ist offen.</translation>
    </message>
    <message>
        <source>One file holds a club&apos;s boats, kit and record. Open it:</source>
        <translation>Eine Datei enthält Boote, Ausrüstung und Aufzeichnungen des Vereins. Öffnen:</translation>
    </message>
    <message>
        <source>Or start one, and import the register into it from a folder of CSV:</source>
        <translation>Oder eine anlegen und das Verzeichnis aus einem CSV-Ordner einlesen:</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>The kit of a club&apos;s rescue boats: launch checks, return checks, the shed board.</source>
        <translation>Die Ausrüstung der Rettungsboote eines Vereins: Auslaufcheck, Rückkehrcheck, Bootsübersicht.</translation>
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
