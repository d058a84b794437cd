<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>texts</name>
    <message numerus="yes">
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>

%n backup(s) hold the member, or can&apos;t be read. To be rid of them, too, delete them from %1.</source>
        <translation>
            <numerusform>

%n Sicherung enthält das Mitglied oder ist nicht lesbar. Um auch diese loszuwerden, aus %1 löschen.</numerusform>
            <numerusform>

%n Sicherungen enthalten das Mitglied oder sind nicht lesbar. Um auch diese loszuwerden, aus %1 löschen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>

Free software under the GNU General Public License, version 3 or later. It comes with no warranty.

</source>
        <translation>

Freie Software unter der GNU General Public License, Version 3 oder später. Ohne jede Gewährleistung.

</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>

What is in place now is kept first, so you can come back to it. What you did before can&apos;t be undone by Ctrl+Z afterwards.</source>
        <translation>

Was jetzt da ist, wird zuerst gesichert, ein Zurück bleibt also möglich. Was vorher getan wurde, lässt sich danach mit Strg+Z nicht mehr rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source> What has the same name or month here is replaced. This can&apos;t be undone, but a backup is made first.</source>
        <translation> Was hier denselben Namen oder Monat hat, wird ersetzt. Das lässt sich nicht rückgängig machen, aber vorher wird eine Sicherung angelegt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source> and %1 more</source>
        <translation> und %1 weitere</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source> lb</source>
        <translation> lb</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/key_sheet.cpp"/>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source> visits</source>
        <translation>
            <numerusform> Besuch</numerusform>
            <numerusform> Besuche</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source> · playing the classes…</source>
        <translation> · spiele die Kurse durch…</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source> · the class changed the order</source>
        <translation> · der Kurs hat die Reihenfolge geändert</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>%1 %2</source>
        <comment>3, September 2026</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>%1 %2 sets, %3 %4 sets</source>
        <translation>%1 %2 Sätze, %3 %4 Sätze</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 %2, round %3</source>
        <translation>%1 %2, Runde %3</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>%1 (month %2)</source>
        <translation>%1 (Monat %2)</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>%1 (not on the Shelf)</source>
        <translation>%1 (nicht im Regal)</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>%1 (retired)</source>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>%1 again: take up your last load.</source>
        <translation>%1 wieder: die letzte Last aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/references.cpp"/>
        <source>%1 already has set %2 of “%3” on %4. Number the sets with “set”.</source>
        <translation>%1 hat am %4 schon Satz %2 von „%3“. Sätze mit „set“ nummerieren.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>%1 and %2 are no opposites; in opposed one rests while the other works.</source>
        <translation>%1 und %2 sind keine Gegenspieler; bei Gegensatzpaaren ruht der eine, während der andere arbeitet.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>%1 and %2 are not of the same or a neighbouring pattern, as heavy-then-long wants.</source>
        <translation>%1 und %2 haben weder dasselbe noch ein benachbartes Muster, wie Schwer-dann-lang es verlangt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>%1 and %2 follow each other and both ask a lot of %3: that may give out before the muscles that are meant.</source>
        <translation>%1 und %2 folgen aufeinander und fordern beide viel: %3. Das kann früher nachgeben als die Muskeln, die gemeint sind.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>%1 and others</source>
        <translation>%1 und andere</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1 are said twice</source>
        <translation>%1 stehen doppelt da</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1 are there already</source>
        <translation>%1 sind schon da</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/member_substitute.cpp"/>
        <source>%1 asks %2 of 3 for %3, and nothing on the Shelf fits in its place: leave it out for this member, or add an exercise.</source>
        <translation>%1 fordert %2 von 3: %3, und nichts im Regal passt an diese Stelle. Für dieses Mitglied weglassen oder eine Übung hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/member_substitute.cpp"/>
        <source>%1 asks %2 of 3 for %3. %4 asks %5, is its easier version, and its kit is here.</source>
        <translation>%1 fordert %2 von 3: %3. %4 fordert %5, ist die leichtere Variante, und das Gerät ist da.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/member_substitute.cpp"/>
        <source>%1 asks %2 of 3 for %3. %4 asks %5, is named as its swap, and its kit is here.</source>
        <translation>%1 fordert %2 von 3: %3. %4 fordert %5, ist als Tausch genannt, und das Gerät ist da.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/member_substitute.cpp"/>
        <source>%1 asks %2 of 3 for %3. %4 asks %5, mainly trains %6, and its kit is here.</source>
        <translation>%1 fordert %2 von 3: %3. %4 fordert %5, trainiert vor allem %6, und das Gerät ist da.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>%1 asks for %2; flags rule it out for %3.</source>
        <translation>%1 fordert %2; Vermerke schließen es aus für %3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>%1 came</source>
        <translation>%1 da</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>%1 can never be served: it takes %2 of “%3” and the gym has %4. Choose another exercise, or change what this one needs.</source>
        <translation>%1 kommt nie an die Reihe: gebraucht werden %2 von „%3“, das Studio hat %4. Eine andere Übung wählen oder ändern, was diese braucht.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/gym_opening.cpp"/>
        <source>%1 can&apos;t be read: %2.</source>
        <translation>%1 ist nicht lesbar: %2.</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>%1 can&apos;t stand beside itself.</source>
        <translation>%1 kann nicht neben sich selbst stehen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>%1 characters are too long: at most 200.</source>
        <translation>%1 Zeichen sind zu lang: höchstens 200.</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>%1 comes again</source>
        <translation>%1 kommt wieder</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>%1 comes first but has no fewer reps than %2; in heavy-then-long the heavy set leads.</source>
        <translation>%1 kommt zuerst, hat aber nicht weniger Wdh. als %2; bei Schwer-dann-lang führt der schwere Satz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>%1 comes first but is no harder an effort than %2; in heavy-then-long the heavy set leads.</source>
        <translation>%1 kommt zuerst, ist aber nicht anstrengender als %2; bei Schwer-dann-lang führt der schwere Satz.</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>%1 comes no more</source>
        <translation>%1 kommt nicht mehr</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/whole_file.cpp"/>
        <source>%1 could not be read: %2.</source>
        <translation>%1 war nicht lesbar: %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/whole_file.cpp"/>
        <source>%1 could not be written: %2. What was there before is still there.</source>
        <translation>%1 war nicht zu schreiben: %2. Was vorher da war, ist noch da.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 ends at %2 in half of the simulated classes, between %3 and %4 in 8 of 10; planned %5.</source>
        <translation>%1 endet in der Hälfte der simulierten Kurse bei %2, in 8 von 10 zwischen %3 und %4; geplant %5.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <source>%1 exercises</source>
        <translation>%1 Übungen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>%1 exercises are new to this gym, more than %2: %3. Each takes coaching in week 1.</source>
        <translation>%1 Übungen sind neu in diesem Studio, mehr als %2: %3. Jede braucht in Woche 1 Anleitung.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>%1 for %2 repetitions with %3 in reserve, by the estimate.</source>
        <translation>%1 für %2 Wiederholungen mit %3 in Reserve, nach der Schätzung.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>%1 for %2 repetitions with %3 in reserve, by the estimate; the gym has not told its loads.</source>
        <translation>%1 für %2 Wiederholungen mit %3 in Reserve, nach der Schätzung; die Lasten des Studios sind nicht angegeben.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>%1 goes up to %2 reps a side in a power set; past %3 the speed is lost.</source>
        <translation>%1 geht in einem Schnellkraftsatz bis %2 Wdh. je Seite; über %3 geht das Tempo verloren.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>%1 goes up to %2 reps in a power set; past %3 the speed is lost.</source>
        <translation>%1 geht in einem Schnellkraftsatz bis %2 Wdh.; über %3 geht das Tempo verloren.</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>%1 has a dose of it that could not be timed any more: keep that pace, or change the dose first.</source>
        <translation>%1 hat eine Dosis, für die sich dann keine Zeit mehr rechnen ließe: dieses Tempo je Einheit behalten oder erst die Dosis ändern.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>%1 has neither an easier nor a harder option on the Shelf.</source>
        <translation>%1 hat im Regal weder eine leichtere noch eine schwerere Variante.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>%1 has no block, so there is nothing to write results beside. Choose another day, or start the month on the Bench.</source>
        <translation>%1 hat keinen Block, also nichts, woneben Ergebnisse stehen könnten. Einen anderen Tag wählen oder den Monat auf der Werkbank beginnen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>%1 has no block.</source>
        <translation>%1 hat keinen Block.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>%1 has no easier option on the Shelf.</source>
        <translation>%1 hat im Regal keine leichtere Variante.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>%1 has no harder option on the Shelf.</source>
        <translation>%1 hat im Regal keine schwerere Variante.</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>%1 has no pace in %2. Dose it in %3, or give it a pace on the Shelf.</source>
        <translation>%1 hat kein Tempo in %2. In %3 dosieren oder im Regal ein Tempo angeben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>%1 has no pace in %2: dose it in %3.</source>
        <translation>%1 hat kein Tempo in %2: in %3 dosieren.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%1 holds %n month(s), </source>
        <translation>
            <numerusform>%1 enthält %n Monat, </numerusform>
            <numerusform>%1 enthält %n Monate, </numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <location filename="../../src/sheets/board/board_words.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>%1 in reserve</source>
        <translation>%1 in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>%1 in the warm-up asks a lot of: %2. What it tires is missing when the work starts.</source>
        <translation>%1 im Aufwärmen fordert viel: %2. Was das ermüdet, fehlt, wenn die Arbeit beginnt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 in week %2, %3. %4.</source>
        <translation>%1 in Woche %2, %3. %4.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>%1 is %2 all out and has %3 until it comes again; the table gives %4. The next round is slower: conditioning, not power.</source>
        <translation>%1 dauert %2 mit vollem Einsatz und hat %3 bis zum nächsten Mal; die Tabelle nennt %4. Die nächste Runde wird langsamer: Kondition statt Schnellkraft.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>%1 is a main lift for %2 months in a row now, more than %3: members stop gaining from it, or tire of it.</source>
        <translation>%1 ist jetzt %2 Monate in Folge Hauptübung, mehr als %3: Mitglieder machen keine Fortschritte mehr damit oder sind es leid.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>%1 is kept as %2, the nearest that can be stored.</source>
        <translation>%1 wird als %2 gespeichert, dem nächsten Wert, der geht.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/whole_file.cpp"/>
        <source>%1 is larger than %2 MiB: bring it in in parts.</source>
        <translation>%1 ist größer als %2 MiB: in Teilen einlesen.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/asked.cpp"/>
        <source>%1 is locked: proposals leave it alone. Unlock it first.</source>
        <translation>%1 ist gesperrt: Vorschläge lassen es in Ruhe. Erst entsperren.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>%1 is new to this gym and has no caution: nobody is told what to watch.</source>
        <translation>%1 ist neu in diesem Studio und hat keinen Vorsichtshinweis: niemand erfährt, worauf zu achten ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>%1 is new to this gym and has no cues for the coaches to share.</source>
        <translation>%1 ist neu in diesem Studio und hat keine Cues, die die Coaches gemeinsam nutzen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>%1 is not done one side at a time on the Shelf: write the dose without “/side”.</source>
        <translation>%1 wird laut Regal nicht einseitig ausgeführt: die Dosis ohne „/side“ schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>%1 is offered again.</source>
        <translation>%1 wird wieder angeboten.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>%1 is retired: no longer offered, kept for the months that used it. The word “retired” in the filter shows it.</source>
        <translation>%1 ist ausgemustert: nicht mehr angeboten, aber behalten für die Monate, die es genutzt haben. Das Wort „ausgemustert“ im Filter zeigt es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>%1 is the long set of its pair and starts at %2 reps; %3 or more make it long.</source>
        <translation>%1 ist der lange Satz seines Paars und beginnt bei %2 Wdh.; ab %3 ist er lang.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time, and no harder option fits: climb on, add load or slow it down.</source>
        <translation>%1 beim letzten Mal, und keine schwerere Variante passt: weiter steigern, Last dazunehmen oder langsamer ausführen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time, fewer than %2, and no easier option fits: stop well before form goes.</source>
        <translation>%1 beim letzten Mal, weniger als %2, und keine leichtere Variante passt: aufhören, lange bevor die Technik nachlässt.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time, fewer than %2: take %3 for %4 until it is easy.</source>
        <translation>%1 beim letzten Mal, weniger als %2: %3 für %4 nehmen, bis es leichtfällt.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time: one more, on the way to %2.</source>
        <translation>%1 beim letzten Mal: eine mehr, auf dem Weg zu %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time: stay, aim at %2.</source>
        <translation>%1 beim letzten Mal: bleiben, Ziel %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/progression.cpp"/>
        <source>%1 last time: with good form go on to %2 for %3; else climb on here.</source>
        <translation>%1 beim letzten Mal: bei guter Technik weiter zu %2 für %3; sonst hier weiter steigern.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>%1 last time: with good form take the next band, a stronger one, or a lighter one where it carries part of the body; else climb on.</source>
        <translation>%1 beim letzten Mal: bei guter Technik das nächste Band nehmen, ein stärkeres oder, wo es einen Teil des Körpers trägt, ein leichteres; sonst weiter steigern.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_clock.cpp"/>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 members</source>
        <translation>%1 Mitglieder</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 members wait</source>
        <translation>%1 Mitglieder warten</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>%1 months</source>
        <translation>%1 Monate</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>%1 months %2 in %3</source>
        <translation>%1 Monate %2 in %3</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <location filename="../../src/interchange/faults.cpp"/>
        <source>%1 more faults are not listed.</source>
        <translation>%1 weitere Fehler sind nicht aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/faults.cpp"/>
        <source>%1 more notes are not listed.</source>
        <translation>%1 weitere Bemerkungen sind nicht aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>%1 more than answer 1</source>
        <translation>%1 mehr als Vorschlag 1</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1 of %2 rows are faulty</source>
        <translation>%1 von %2 Zeilen sind fehlerhaft</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overrun_chance.cpp"/>
        <source>%1 of %2 simulated classes run over the %3 of the class; they end at %4 on average.</source>
        <translation>%1 von %2 simulierten Kursen überschreiten die %3 des Kurses; im Mittel enden sie bei %4.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1 of 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>%1 of last month&apos;s main lifts is carried over, fewer than %2. It had: %3.</source>
        <translation>%1 der Hauptübungen vom letzten Monat ist übernommen, weniger als %2. Er hatte: %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets move forwards or up and down, less than %2.</source>
        <translation>%1 der Sätze des Monats gehen vorwärts oder auf und ab, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets move forwards or up and down, more than %2.</source>
        <translation>%1 der Sätze des Monats gehen vorwärts oder auf und ab, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets move sideways, less than %2.</source>
        <translation>%1 der Sätze des Monats gehen seitwärts, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets move sideways, more than %2.</source>
        <translation>%1 der Sätze des Monats gehen seitwärts, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets turn or resist turning, less than %2.</source>
        <translation>%1 der Sätze des Monats drehen oder widerstehen einer Drehung, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>%1 of the month&apos;s sets turn or resist turning, more than %2.</source>
        <translation>%1 der Sätze des Monats drehen oder widerstehen einer Drehung, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>%1 of the month&apos;s sets work one side at a time, less than %2.</source>
        <translation>%1 der Sätze des Monats sind einseitig, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>%1 of the month&apos;s sets work one side at a time, more than %2: the hour gets long.</source>
        <translation>%1 der Sätze des Monats sind einseitig, mehr als %2: die Stunde wird lang.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 of them already out</source>
        <translation>davon %1 schon draußen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>%1 open slots take no time yet</source>
        <translation>%1 offene Slots brauchen noch keine Zeit</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <location filename="../../src/sheets/board/board_clock.cpp"/>
        <source>%1 over</source>
        <translation>%1 darüber</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>%1 pages.</source>
        <translation>%1 Seiten.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 people</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 people, all at the same station</source>
        <translation>%1 Personen, alle an derselben Station</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 people, over the stations</source>
        <translation>%1 Personen, über die Stationen verteilt</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/mass_text.cpp"/>
        <location filename="../../src/sheets/worded.cpp"/>
        <source>%1 repetitions with %2 in reserve</source>
        <translation>%1 Wiederholungen mit %2 in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1 replace other figures</source>
        <translation>%1 ersetzen andere Zahlen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>%1 reps</source>
        <translation>%1 Wdh.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>%1 round</source>
        <translation>%1 Runde</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>%1 rounds</source>
        <translation>%1 Runden</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>%1 sets a session</source>
        <translation>%1 Sätze je Einheit</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1 sets are new</source>
        <translation>%1 Sätze sind neu</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>%1 stands in this family already: take it out there first.</source>
        <translation>%1 steht schon in dieser Familie: dort erst herausnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>%1 stands on it in %2.</source>
        <translation>%1 steht im %2 darauf.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 start here</source>
        <translation>%1 beginnen hier</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 starts here</source>
        <translation>%1 beginnt hier</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_short.cpp"/>
        <source>%1 takes %2 of “%3” and the gym has %4: nobody can do it, even in turns.</source>
        <translation>%1 braucht %2 von „%3“, und das Studio hat %4: niemand kann es ausführen, auch nicht abwechselnd.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_short.cpp"/>
        <source>%1 takes %2 of “%3” and the gym has none: nobody can do it, even in turns.</source>
        <translation>%1 braucht %2 von „%3“, und das Studio hat keine: niemand kann es ausführen, auch nicht abwechselnd.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>%1 takes skill and has no caution: nobody is told what to watch.</source>
        <translation>%1 verlangt Können und hat keinen Vorsichtshinweis: niemand erfährt, worauf zu achten ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>%1 takes skill and has no cues for the coaches to share.</source>
        <translation>%1 verlangt Können und hat keine Cues, die die Coaches gemeinsam nutzen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>%1 to spare</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>%1 will be taken out of this gym file for good and overwritten: the name, flags and their notes, and </source>
        <translation>%1 wird endgültig aus dieser Studiodatei entfernt und überschrieben: der Name, Vermerke mit ihren Notizen und </translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>%1 · %2 left</source>
        <translation>%1 · %2 übrig</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>%1 · Handbook</source>
        <translation>%1 · Handbuch</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/status_line.cpp"/>
        <source>%1 · all changes kept</source>
        <translation>%1 · alle Änderungen gespeichert</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/status_line.cpp"/>
        <source>%1 · read-only: %2 is writing to it</source>
        <translation>%1 · schreibgeschützt: %2 schreibt gerade hinein</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/status_line.cpp"/>
        <source>%1 · read-only: the file or its folder can&apos;t be written</source>
        <translation>%1 · schreibgeschützt: Datei oder Ordner ist nicht beschreibbar</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/mass_text.cpp"/>
        <location filename="../../src/sheets/worded.cpp"/>
        <source>%1 × %2 with %3 in reserve</source>
        <translation>%1 × %2 mit %3 in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/wait_model.cpp"/>
        <source>%1, %2 in the gym: a member waits %3 on average, 9 in 10 at most %4; in use %5 of the time</source>
        <translation>%1, %2 im Studio: ein Mitglied wartet im Mittel %3, 9 von 10 höchstens %4; in Gebrauch %5 der Zeit</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1, %2 of %3</source>
        <translation>%1, %2 von %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>%1, %2 of classes too late</source>
        <translation>%1, %2 der Kurse zu spät</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, carries over from last month, takes %5.</source>
        <translation>%1, %2: trainiert %3, bleibt vom letzten Monat, braucht %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, carries over from last month, takes no kit.</source>
        <translation>%1, %2: trainiert %3, bleibt vom letzten Monat, braucht kein Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, is new to this gym, takes %5.</source>
        <translation>%1, %2: trainiert %3, ist neu in diesem Studio, braucht %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, is new to this gym, takes no kit.</source>
        <translation>%1, %2: trainiert %3, ist neu in diesem Studio, braucht kein Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, takes %5.</source>
        <translation>%1, %2: trainiert %3, braucht %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, takes no kit.</source>
        <translation>%1, %2: trainiert %3, braucht kein Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, was here last in %4, takes %5.</source>
        <translation>%1, %2: trainiert %3, war zuletzt im %4 dabei, braucht %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>%1, %2: trains %3, was here last in %4, takes no kit.</source>
        <translation>%1, %2: trainiert %3, war zuletzt im %4 dabei, braucht kein Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>%1, band %2</source>
        <translation>%1, Bereich %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>%1, band %2–%3</source>
        <translation>%1, Bereich %2–%3</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>%1, but for %2</source>
        <translation>%1, außer %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/class_model.cpp"/>
        <source>%1, came</source>
        <translation>%1, da</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>%1, for a flag</source>
        <translation>%1, wegen eines Vermerks</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>%1, group %2: %3</source>
        <translation>%1, Gruppe %2: %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>%1, last used %2</source>
        <translation>%1, zuletzt genutzt %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>%1, limit %2</source>
        <translation>%1, Grenze %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>%1, main lift</source>
        <translation>%1, Hauptübung</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>%1, month %2: take up your last load.</source>
        <translation>%1, Monat %2: die letzte Last aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>%1, never used</source>
        <translation>%1, nie genutzt</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>%1, not owned</source>
        <translation>%1, nicht vorhanden</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <source>%1, of this family</source>
        <translation>%1, aus dieser Familie</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>%1, owned</source>
        <translation>%1, vorhanden</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>%1, retired</source>
        <translation>%1, ausgemustert</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>%1/side</source>
        <translation>%1/Seite</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>%1: %2</source>
        <comment>column, what stands in it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <source>%1: %2</source>
        <comment>easier, name</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>%1: %2</source>
        <comment>line, what it says</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/tally_model.cpp"/>
        <source>%1: %2 sets a session</source>
        <translation>%1: %2 Sätze je Einheit</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>%1: a name</source>
        <translation>%1: ein Name</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>%1: does each column mean what stands above its rows?</source>
        <translation>%1: bedeutet jede Spalte, was über ihren Zeilen steht?</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/loading.cpp"/>
        <source>%1: each side %2</source>
        <translation>%1: je Seite %2</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>%1: leave it out; nothing on the Shelf fits</source>
        <translation>%1: weglassen; nichts im Regal passt</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_model.cpp"/>
        <source>%1: no block</source>
        <translation>%1: kein Block</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/loading.cpp"/>
        <source>%1: plates %2</source>
        <translation>%1: Scheiben %2</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/loading.cpp"/>
        <source>%1: the empty bar</source>
        <translation>%1: die leere Stange</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/loading.cpp"/>
        <source>%1: the empty sled</source>
        <translation>%1: der leere Schlitten</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <source>%1: waiting</source>
        <translation>%1: wartet</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>%2 is not explosive; in heavy-then-fast it follows %1 to be moved fast.</source>
        <translation>%2 ist nicht explosiv; bei Schwer-dann-schnell folgt es auf %1, um schnell bewegt zu werden.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>%2 is not of the pattern of %1; in heavy-then-fast the fast one repeats the heavy one.</source>
        <translation>%2 hat nicht das Muster von %1; bei Schwer-dann-schnell wiederholt die schnelle Übung die schwere.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%n exercise(s), </source>
        <translation>
            <numerusform>%n Übung, </numerusform>
            <numerusform>%n Übungen, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%n member(s) </source>
        <translation>
            <numerusform>%n Mitglied </numerusform>
            <numerusform>%n Mitglieder </numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>&amp;About Blockwright</source>
        <translation>&amp;Über Blockwright</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>&amp;Add a flag</source>
        <translation>Vermerk &amp;hinzufügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Add a member…</source>
        <translation>Mitglied &amp;hinzufügen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>&amp;Add an exercise…</source>
        <translation>Übung h&amp;inzufügen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>&amp;Back up now</source>
        <translation>Jetzt s&amp;ichern</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>&amp;Black and white</source>
        <translation>S&amp;chwarz-weiß</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>&amp;Bring in a bundle…</source>
        <translation>&amp;Bündel einlesen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Bring in a table…</source>
        <translation>&amp;Tabelle einlesen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>&amp;Cards a page</source>
        <translation>&amp;Karten je Seite</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>&amp;Class</source>
        <translation>&amp;Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>&amp;Class of</source>
        <translation>Kurs &amp;vom</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>&amp;Comes to class</source>
        <translation>&amp;Kommt zum Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>&amp;Copy…</source>
        <translation>&amp;Kopieren…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Dark colours</source>
        <translation>&amp;Dunkle Farben</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Erase this member…</source>
        <translation>Dieses Mitglied &amp;löschen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>&amp;Filter</source>
        <translation>&amp;Filter</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>&amp;Find a command…</source>
        <translation>&amp;Befehl suchen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Gym</source>
        <translation>&amp;Studio</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>&amp;Keep the sheet as PDF…</source>
        <translation>Blatt als PDF &amp;ablegen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Language</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>&amp;Larger print</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Light colours</source>
        <translation>&amp;Helle Farben</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>&amp;Look around Saltmarsh Boathouse</source>
        <translation>Saltmarsh Boathouse a&amp;nsehen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;Month</source>
        <translation>&amp;Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Name and flags…</source>
        <translation>&amp;Name und Vermerke…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>&amp;New gym…</source>
        <translation>&amp;Neues Studio…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>&amp;Only who came</source>
        <translation>&amp;Nur wer da war</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>&amp;Open a gym file…</source>
        <translation>Studiodatei ö&amp;ffnen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>&amp;Previous month</source>
        <translation>&amp;Voriger Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>&amp;Remove the month on show…</source>
        <translation>Gezeigten Monat &amp;entfernen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>&amp;Restore this one…</source>
        <translation>Diese wiederhers&amp;tellen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>&amp;Results</source>
        <translation>E&amp;rgebnisse</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>&amp;Retire</source>
        <translation>A&amp;usmustern</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>&amp;Sheets</source>
        <translation>Blä&amp;tter</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>&amp;Show</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>&amp;Sort by this column</source>
        <translation>Nach dieser Spalte s&amp;ortieren</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>&amp;Start</source>
        <translation>Star&amp;t</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>&amp;Start %1 from %2</source>
        <translation>%1 aus %2 begi&amp;nnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>&amp;Start an empty gym</source>
        <translation>&amp;Leeres Studio beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>&amp;Start the first month</source>
        <translation>Den &amp;ersten Monat beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>&amp;Start the next month</source>
        <translation>&amp;Nächsten Monat beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>&amp;Tick the usual kit</source>
        <translation>Das Übliche anha&amp;ken</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>&amp;Warm-up and finisher, too</source>
        <translation>Auch Aufwärmen und &amp;Finisher</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/week_row.cpp"/>
        <source>&amp;Week</source>
        <translation>&amp;Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Write all as a table…</source>
        <translation>&amp;Alles als Tabelle schreiben…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>&amp;Write all of this member…</source>
        <translation>Alles &amp;dieses Mitglieds schreiben…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>&amp;Write as a bundle…</source>
        <translation>Als Bündel &amp;schreiben…</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/tally_model.cpp"/>
        <source>, %1 over %2 months</source>
        <translation>, %1 über %2 Monate</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>, for a flag</source>
        <translation>, wegen eines Vermerks</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>, main lift</source>
        <translation>, Hauptübung</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <source>, not stored</source>
        <translation>, nicht gespeichert</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>, rest %1</source>
        <translation>, Pause %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>--language %1: it is system, en or de.</source>
        <translation>--language %1: möglich sind system, en oder de.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>--theme %1: it is system, light, dark or contrast.</source>
        <translation>--theme %1: möglich sind system, light, dark oder contrast.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>.

This can&apos;t be undone, and what was done before can&apos;t be undone after it. Copies, bundles and tables that were written before still hold the member.</source>
        <translation>.

Das lässt sich nicht rückgängig machen, und was davor getan wurde, danach auch nicht mehr. Kopien, Bündel und Tabellen, die früher geschrieben wurden, enthalten das Mitglied noch.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>/side</source>
        <translation>/Seite</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>1 (anyone)</source>
        <translation>1 (jeder)</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>1 exercise</source>
        <translation>1 Übung</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>1 member</source>
        <translation>1 Mitglied</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>1 member waits</source>
        <translation>1 Mitglied wartet</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>1 open slot takes no time yet</source>
        <translation>1 offener Slot braucht noch keine Zeit</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>1 round</source>
        <translation>1 Runde</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>1 to round loads down; 0 to round them to the nearest.</source>
        <translation>1: Lasten abrunden; 0: zur nächsten runden.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>1 when week 1 may ask for more rounds than the last week.</source>
        <translation>1, wenn Woche 1 mehr Runden verlangen darf als die letzte Woche.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>1, 2 or 3</source>
        <translation>1, 2 oder 3</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>10 less the repetitions in reserve</source>
        <translation>10 minus Wiederholungen in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>12, 8–12 min, 45 s or 1:30</source>
        <translation>12, 8–12 min, 45 s oder 1:30</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>2 (needs teaching)</source>
        <translation>2 (muss gelehrt werden)</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>2, 1–3 or RPE 8</source>
        <translation>2, 1–3 oder RPE 8</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>3 (needs weeks of coaching)</source>
        <translation>3 (braucht Wochen an Anleitung)</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>3 or 2–3</source>
        <translation>3 oder 2–3</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>3 s/rep, 1.2 m/s or 10 kcal/min</source>
        <translation>3 s/rep, 1.2 m/s oder 10 kcal/min</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>5, 5–10, 10/side, 30 s, 1:30, 2 min, 15 m or 5 cal</source>
        <translation>5, 5–10, 10/side, 30 s, 1:30, 2 min, 15 m oder 5 cal</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>6 or 0.5</source>
        <translation>6 oder 0.5</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>60-120 s, 1:30-2:00 or 1-2 min</source>
        <translation>60-120 s, 1:30-2:00 oder 1-2 min</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>90 s, 1:30 or 2 min</source>
        <translation>90 s, 1:30 oder 2 min</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>90, 60–120 s, 2 min, 1:30–2:00 or no rest</source>
        <translation>90, 60–120 s, 2 min, 1:30–2:00 oder no rest</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>: last in %1</source>
        <translation>: zuletzt im %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>: new to this gym</source>
        <translation>: neu in diesem Studio</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>; budget %1</source>
        <translation>; Budget %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/trend_chart.cpp"/>
        <source>; could lift %1 once (%2 to %3)</source>
        <translation>; könnte %1 einmal heben (%2 bis %3)</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/trend_chart.cpp"/>
        <source>; could lift at least %1 once</source>
        <translation>; könnte mindestens %1 einmal heben</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>; ratio %1, band %2: %3.</source>
        <translation>; Verhältnis %1, Bereich %2: %3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>; ratio %1, band %2: %3. </source>
        <translation>; Verhältnis %1, Bereich %2: %3. </translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>A *.bwgym file that is on this machine already.</source>
        <translation>Eine *.bwgym-Datei, die schon auf diesem Rechner ist.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>A change does not fit the rest of “%1” (%2), so nothing was stored: it holds what it held before. Leave that change out, then do it again.</source>
        <translation>Eine Änderung passt nicht zum Rest von „%1“ (%2), deshalb wurde nichts gespeichert: der bisherige Inhalt ist noch da. Diese Änderung weglassen und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>A character in line %1, column %2 is not UTF-8. Save the file as UTF-8 and try again.</source>
        <translation>Ein Zeichen in Zeile %1, Spalte %2 ist kein UTF-8. Die Datei als UTF-8 speichern und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>A class has 1 to %1 members.</source>
        <translation>Ein Kurs hat 1 bis %1 Mitglieder.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise.cpp"/>
        <source>A demand must be from 0 to 3.</source>
        <translation>Eine Anforderung liegt zwischen 0 und 3.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/dose.cpp"/>
        <source>A dose must be above 0 and at most %1 %2.</source>
        <translation>Eine Dosis liegt über 0 und bei höchstens %1 %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>A flag of %3 rules out all of the %2 that would fit.</source>
        <translation>Ein Vermerk von %3 schließt alle der %2 passenden aus.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <source>A flag only looks for another exercise. About pain, injury or return to training a licensed professional decides.</source>
        <translation>Ein Vermerk sucht nur eine andere Übung. Über Schmerz, Verletzung oder Rückkehr ins Training entscheidet eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>A flag only makes the program look for another exercise; a licensed professional decides what is right.</source>
        <translation>Ein Vermerk lässt das Programm nur nach einer anderen Übung suchen; was richtig ist, entscheidet eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>A gentler step between the two weeks</source>
        <translation>Ein sanfterer Schritt zwischen den beiden Wochen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>A gym that someone wrote as a *.bundle.json file.</source>
        <translation>Ein Studio, das jemand als *.bundle.json-Datei geschrieben hat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>A lane for each</source>
        <translation>Eine Bahn für jeden</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>A licensed professional decides what is right.</source>
        <translation>Was richtig ist, entscheidet eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/quantity.cpp"/>
        <source>A load must be from 0 to 2 000 kg.</source>
        <translation>Eine Last liegt zwischen 0 und 2 000 kg.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_queue.cpp"/>
        <source>A longer wait for one kit item stops the draft.</source>
        <translation>Ein längeres Warten auf ein Gerät stoppt den Entwurf.</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>A member needs a name of 1 to 200 characters.</source>
        <translation>Ein Mitglied braucht einen Namen von 1 bis 200 Zeichen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>A member needs a name.</source>
        <translation>Ein Mitglied braucht einen Namen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>A member waits %1 for kit</source>
        <translation>Ein Mitglied wartet %1 auf Geräte</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>A month brings something new, and not too much of it.</source>
        <translation>Ein Monat bringt etwas Neues, aber nicht zu viel davon.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>A one-sided exercise less</source>
        <translation>Eine einseitige Übung weniger</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>A one-sided exercise more</source>
        <translation>Eine einseitige Übung mehr</translation>
    </message>
    <message>
        <location filename="../../src/core/model/quantity.cpp"/>
        <source>A pace must be above 0 and at most 1 000.</source>
        <translation>Ein Tempo liegt über 0 und bei höchstens 1 000.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>A press up or a pull down more</source>
        <translation>Ein Drücken nach oben oder Ziehen nach unten mehr</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>A reason has up to 200 characters: nothing was kept.</source>
        <translation>Eine Begründung hat bis zu 200 Zeichen: nichts wurde gespeichert.</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>A reason is one line: nothing was kept.</source>
        <translation>Eine Begründung ist eine Zeile: nichts wurde gespeichert.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>A repetition less in reserve</source>
        <translation>Eine Wiederholung weniger in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>A repetition more in reserve</source>
        <translation>Eine Wiederholung mehr in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/store/rows/result_rows.cpp"/>
        <source>A result belongs to “%1”, who is not a member of this gym. Nothing was stored. Add the member, then do it again.</source>
        <translation>Ein Ergebnis gehört zu „%1“, kein Mitglied dieses Studios. Nichts wurde gespeichert. Das Mitglied hinzufügen und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>A row or a press away from the chest more</source>
        <translation>Ein Rudern oder Drücken nach vorn mehr</translation>
    </message>
    <message>
        <location filename="../../src/core/model/quantity.cpp"/>
        <source>A share must be from 0 to 1.</source>
        <translation>Ein Anteil liegt zwischen 0 und 1.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_slot.cpp"/>
        <source>A slot has one dose only: reps, seconds, metres or kcal.</source>
        <translation>Ein Slot hat nur eine Dosis: reps, seconds, metres oder kcal.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_slot.cpp"/>
        <source>A slot needs a dose: reps, seconds, metres or kcal.</source>
        <translation>Ein Slot braucht eine Dosis: reps, seconds, metres oder kcal.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>A slot with an exercise needs a dose.</source>
        <translation>Ein Slot mit einer Übung braucht eine Dosis.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>A squat, hinge, press or row more</source>
        <translation>Eine Kniebeuge, Hüftbeuge, ein Drücken oder Rudern mehr</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_block.cpp"/>
        <source>A stair needs at least one week; leave the key out for the usual four.</source>
        <translation>Eine Treppe braucht mindestens eine Woche; für die üblichen vier den Schlüssel weglassen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>A tick takes a usual number: write your own over it. Weights tell the program what it can ask members to lift.</source>
        <translation>Ein Haken nimmt die übliche Zahl: die eigene darüberschreiben. Gewichte sagen dem Programm, was es Mitglieder heben lassen kann.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>A week has one figure for what is left in reserve.</source>
        <translation>Eine Woche hat eine einzige Zahl für das, was in Reserve bleibt.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>A4, Letter or A3</source>
        <translation>A4, Letter oder A3</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>A4, Letter or A3: what the sheets are printed on.</source>
        <translation>A4, Letter oder A3: worauf die Blätter gedruckt werden.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 2 to 10 % more load once one or two repetitions over the target are possible. What was read of the stand of 2026 gives no other step.</source>
        <translation>ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 2 bis 10 % mehr Last, sobald eine oder zwei Wiederholungen über dem Ziel möglich sind. Was vom Stand 2026 gelesen wurde, nennt keinen anderen Schritt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>ACSM 2026 (Med Sci Sports Exerc, overview of reviews, from summaries): about 10 sets a week and muscle for growth, 2 to 3 sets twice a week for strength. Iversen et al. 2021 (Sports Med 51:2079-2095): 4 a week as the least. The upper end is common practice; none is published. The Shelf counts a muscle that helps for less than one (Pelland et al. 2025, Sports Med, doi 10.1007/s40279-025-02344-w: one half fitted best).</source>
        <translation>ACSM 2026 (Med Sci Sports Exerc, Übersicht über Reviews, nach Zusammenfassungen): etwa 10 Sätze je Woche und Muskel für Wachstum, 2 bis 3 Sätze zweimal die Woche für Kraft. Iversen et al. 2021 (Sports Med 51:2079-2095): 4 je Woche als das Mindeste. Das obere Ende ist übliche Praxis; veröffentlicht ist keines. Das Regal zählt einen helfenden Muskel weniger als ganz (Pelland et al. 2025, Sports Med, doi 10.1007/s40279-025-02344-w: ein halb passte am besten).</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>ACSM 2026 (Med Sci Sports Exerc, overview of reviews, from summaries): power is moved fast, at 30 to 70 % 1RM. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 3 to 6 reps in a power set.</source>
        <translation>ACSM 2026 (Med Sci Sports Exerc, Übersicht über Reviews, nach Zusammenfassungen): Schnellkraft wird schnell bewegt, bei 30 bis 70 % 1RM. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 3 bis 6 Wdh. in einem Schnellkraftsatz.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>ACSM, Med Sci Sports Exerc 2009;41(3):687-708: 2 to 10 %.</source>
        <translation>ACSM, Med Sci Sports Exerc 2009;41(3):687-708: 2 bis 10 %.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>About %1 (8 times in 10 from %2 to %3), from %6 days since %7, last %4 on %5.</source>
        <translation>Etwa %1 (8 von 10 Mal %2 bis %3), aus %6 Tagen seit %7, zuletzt %4 am %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>About %1 (8 times in 10 from %2 to %3), from one day: %4 on %5.</source>
        <translation>Etwa %1 (8 von 10 Mal %2 bis %3), aus einem Tag: %4 am %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>About %1 (8 times in 10 from %2 to %3).</source>
        <translation>Etwa %1 (8 von 10 Mal %2 bis %3).</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>About %1 (8 times in 10 from %2 to %3): no results of its own, so %4 times %5.</source>
        <translation>Etwa %1 (8 von 10 Mal %2 bis %3): keine eigenen Ergebnisse, also %4 mal %5.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>About %1 minutes, questions included.</source>
        <translation>Etwa %1 Minuten, Fragen eingeschlossen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>About Blockwright</source>
        <translation>Über Blockwright</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>About this line</source>
        <translation>Zu dieser Zeile</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Accept the finding…</source>
        <translation>Hinweis akzeptieren…</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>Accepted as “%1” before: “%2”</source>
        <translation>Früher als „%1“ akzeptiert: „%2“</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/accepted_fold.cpp"/>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Accepted findings</source>
        <translation>Akzeptierte Hinweise</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>Accepted when it was %1: “%2”</source>
        <translation>Akzeptiert, als es %1 war: „%2“</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/accepted_fold.cpp"/>
        <location filename="../../src/desk/bench/findings_model.cpp"/>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Accepted: %1</source>
        <translation>Akzeptiert: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <source>Accept…</source>
        <translation>Akzeptieren…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Add a member</source>
        <translation>Mitglied hinzufügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Add a member, change or take out this one</source>
        <translation>Ein Mitglied hinzufügen, dieses ändern oder herausnehmen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Add a pair below</source>
        <translation>Paar darunter einfügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Add a section below: %1</source>
        <translation>Abschnitt darunter einfügen: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Add a slot below</source>
        <translation>Slot darunter einfügen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Add an open slot to group %1</source>
        <translation>In Gruppe %1 einen offenen Slot einfügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Add the member</source>
        <translation>Mitglied hinzufügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/exercise_editor.cpp"/>
        <source>Add “%1” to the Shelf</source>
        <translation>„%1“ ins Regal aufnehmen</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <source>Add: %1</source>
        <translation>Dazu: %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>After %1 the round begins again with %2, and both ask a lot of %3.</source>
        <translation>Nach %1 beginnt die Runde wieder mit %2, und beide fordern viel: %3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>After “since” comes a month, such as %1 or July.</source>
        <translation>Nach „seit“ kommt ein Monat, etwa %1 oder Juli.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>All back</source>
        <translation>Alle zurück</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>All back…</source>
        <translation>Alle zurück…</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>All of the %2 that would fit are in the session already.</source>
        <translation>Alle der %2 passenden stehen schon in der Einheit.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>All of the %2 that would fit take kit that is to be left alone.</source>
        <translation>Alle der %2 passenden brauchen Geräte, die außen vor bleiben sollen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_view.cpp"/>
        <source>All of the exercise</source>
        <translation>Alles zur Übung</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>All rounds of each group.</source>
        <translation>Alle Runden jeder Gruppe.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>All sheets are kept in %1.</source>
        <translation>Alle Blätter liegen in %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Almanac</source>
        <translation>Almanach</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Alt+Left</source>
        <translation>Alt+Links</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Alt+Right</source>
        <translation>Alt+Rechts</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_view.cpp"/>
        <source>An empty sheet. Start a month from the Month menu, or add a section with Ctrl+Shift+G.</source>
        <translation>Ein leeres Blatt. Im Menü Monat einen Monat beginnen oder mit Strg+Umschalt+G einen Abschnitt einfügen.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise.cpp"/>
        <source>An exercise measured in %1 needs its pace: %2.</source>
        <translation>Eine in %1 gemessene Übung braucht ihr Tempo: %2.</translation>
    </message>
    <message>
        <location filename="../../src/edit/gym_verbs.cpp"/>
        <source>An exercise needs a name of 1 to 200 characters.</source>
        <translation>Eine Übung braucht einen Namen von 1 bis 200 Zeichen.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>An exercise needs a name.</source>
        <translation>Eine Übung braucht einen Namen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>An invented gym with fourteen finished months and a draft. It is a copy of your own: change what you like.</source>
        <translation>Ein erfundenes Studio mit vierzehn fertigen Monaten und einem Entwurf. Es ist eine eigene Kopie: alles darf geändert werden.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Another format, with groups to suit it</source>
        <translation>Ein anderes Format, mit Gruppen, die dazu passen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Another lift of the same pattern</source>
        <translation>Eine andere Übung desselben Musters</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Another partner for one of the two</source>
        <translation>Ein anderer Partner für eine der beiden</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>Another program is busy with “%1”, so nothing was stored: it holds what it held before. Wait a moment or close that program, then do it again.</source>
        <translation>Ein anderes Programm benutzt gerade „%1“, deshalb wurde nichts gespeichert: der bisherige Inhalt ist noch da. Kurz warten oder jenes Programm schließen und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Answer %1 of %2 · penalty %3 → %4 %5 · %6</source>
        <translation>Vorschlag %1 von %2 · Strafpunkte %3 → %4 %5 · %6</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Apply this answer</source>
        <translation>Diesen Vorschlag anwenden</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>Apply: %1</source>
        <translation>Anwenden: %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_short.cpp"/>
        <source>Arithmetic.</source>
        <translation>Rechnung.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>As a copy of %1</source>
        <translation>Als Kopie von %1</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>As last time: %1 on %2.</source>
        <translation>Wie beim letzten Mal: %1 am %2.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>As many rounds as there is time for.</source>
        <translation>So viele Runden, wie Zeit ist.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>As of %1, the day of the newest result.</source>
        <translation>Stand %1, der Tag des neuesten Ergebnisses.</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>At each group 0 to %1 members start.</source>
        <translation>An jeder Gruppe beginnen 0 bis %1 Mitglieder.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>At least about %1: no set says how many were in reserve; last %4 on %5.</source>
        <translation>Mindestens etwa %1: kein Satz sagt, wie viele in Reserve waren; zuletzt %4 am %5.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>At least one main lift stays from last month.</source>
        <translation>Mindestens eine Hauptübung bleibt vom letzten Monat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>At most 400 members start at one group.</source>
        <translation>Höchstens 400 Mitglieder beginnen an einer Gruppe.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>B&amp;ring back</source>
        <translation>Z&amp;urückholen</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Ba&amp;ckups…</source>
        <translation>Si&amp;cherungen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Back again</source>
        <translation>Wieder dabei</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>Back to the rule book&apos;s</source>
        <translation>Zurück zum Wert des Regelbuchs</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Backed up as %1.</source>
        <translation>Gesichert als %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Backup of %1</source>
        <translation>Sicherung vom %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>Backups of %1</source>
        <translation>Sicherungen von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>Backups, the last first</source>
        <translation>Sicherungen, die letzte zuerst</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>Balance by month</source>
        <translation>Gleichgewicht nach Monaten</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/tally_list.cpp"/>
        <source>Bar: this month. Tick: the months of the window.</source>
        <translation>Balken: dieser Monat. Strich: die Monate des Zeitfensters.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>Bars and plates</source>
        <translation>Stangen und Scheiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_panel.cpp"/>
        <location filename="../../src/desk/bench/beam_view.cpp"/>
        <source>Beam</source>
        <translation>Waage</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_view.cpp"/>
        <source>Beam. %1. Enter goes to the rows of %2.</source>
        <translation>Waage. %1. Die Eingabetaste geht zu den Zeilen von %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_panel.cpp"/>
        <source>Beam: the balance of the month</source>
        <translation>Waage: das Gleichgewicht des Monats</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Before you start</source>
        <translation>Bevor es losgeht</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Beginnings of words, all of which must fit: name, pattern, role, kit, load, muscle, demand.
no barbell: without that word
grip 2, skill 1: a demand of so much or more; that skill
unused, unused 3: by no month; by none of the last three (used likewise)
since July, not since July: used then or later, or not
retired: those that are no longer offered
Right takes the rest of a word.</source>
        <translation>Wortanfänge, die alle passen müssen: Name, Muster, Rolle, Gerät, Last, Muskel, Anforderung.
keine Langhantel: ohne dieses Wort
Griff 2, Können 1: eine Anforderung ab dieser Höhe; dieses Können
ungenutzt, ungenutzt 3: in keinem Monat; in keinem der letzten drei (genutzt ebenso)
seit Juli, nicht seit Juli: seitdem genutzt, oder nicht
ausgemustert: was nicht mehr angeboten wird
Die Taste Rechts übernimmt den Rest eines Worts.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>Bells, balls and bags</source>
        <translation>Hanteln, Bälle und Säcke</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/asked.cpp"/>
        <source>Between 1 and %1 answers can be asked for.</source>
        <translation>Zwischen 1 und %1 Vorschläge lassen sich anfordern.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/asked.cpp"/>
        <source>Between 1 and %1 threads can be asked for.</source>
        <translation>Zwischen 1 und %1 Threads lassen sich anfordern.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Blockwright</source>
        <translation>Blockwright</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>Blockwright drafts a month of small-group strength classes, checks it by computing, and prints its sheets.

</source>
        <translation>Blockwright entwirft den Monat eines Kleingruppen-Krafttrainings, prüft ihn durch Rechnen und druckt seine Blätter.

</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_view.cpp"/>
        <source>Board</source>
        <translation>Tafel</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_view.cpp"/>
        <source>Board. This month has nothing to show yet.</source>
        <translation>Tafel. Dieser Monat hat noch nichts zu zeigen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_view.cpp"/>
        <source>Board: %1, section %2 of %3. %4</source>
        <translation>Tafel: %1, Abschnitt %2 von %3. %4</translation>
    </message>
    <message>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>Bold name: a main lift of the month.</source>
        <translation>Fett: eine Hauptübung des Monats.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Bring in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Bring in %1 sets</source>
        <translation>%1 Sätze einlesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Bring in %1 sets, leave the faulty rows out</source>
        <translation>%1 Sätze einlesen, fehlerhafte Zeilen weglassen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Bring in a bundle</source>
        <translation>Bündel einlesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Bring in a table of results</source>
        <translation>Tabelle mit Ergebnissen einlesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>Bring it in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Bring results in, or write them out</source>
        <translation>Ergebnisse einlesen oder schreiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Brings %1</source>
        <translation>Bringt %1</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>Brings: %1</source>
        <translation>Bringt: %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Build: a little more than last week, in good form.</source>
        <translation>Aufbauen: etwas mehr als letzte Woche, mit guter Technik.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Bundles (*.bundle.json *.json);;All files (*)</source>
        <translation>Bündel (*.bundle.json *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>By the &amp;load</source>
        <translation>Nach der &amp;Last</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Calendar months in a row that an exercise may be a main lift.</source>
        <translation>Kalendermonate in Folge, die eine Übung Hauptübung sein darf.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Calendar months in a row that may have the same format.</source>
        <translation>Kalendermonate in Folge, die dasselbe Format haben dürfen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Call the month %1: all its pairs are</source>
        <translation>Den Monat %1 nennen: alle seine Paare sind so</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Challenge: the heaviest week, in good form.</source>
        <translation>Fordern: die schwerste Woche, mit guter Technik.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>Choose a member in the grid.</source>
        <translation>Im Raster ein Mitglied wählen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>Choose a member to see what each week asks of them, in loads that this gym has. Part of a name is enough.</source>
        <translation>Ein Mitglied wählen, um zu sehen, was jede Woche von ihm verlangt, in Lasten dieses Studios. Ein Teil des Namens genügt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>Choose a slot in the table.</source>
        <translation>In der Tabelle einen Slot wählen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Choose above the rows which columns hold what is missing.</source>
        <translation>Über den Zeilen wählen, welche Spalten das Fehlende enthalten.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Choose another one.</source>
        <translation>Eine andere wählen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Class date</source>
        <translation>Kursdatum</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_list.cpp"/>
        <source>Clear away</source>
        <translation>Wegräumen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Clear the cell, or open the slot</source>
        <translation>Zelle leeren oder Slot öffnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>Closing</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>Colours of the &amp;system</source>
        <translation>Farben des &amp;Systems</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Colours: system, light, dark or contrast.</source>
        <translation>Farben: system, light, dark oder contrast.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_table.cpp"/>
        <source>Columns of the Shelf</source>
        <translation>Spalten des Regals</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>Columns of the backups</source>
        <translation>Spalten der Sicherungen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_table.cpp"/>
        <source>Columns of the kit</source>
        <translation>Spalten der Geräte</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_table.cpp"/>
        <source>Columns of the limits</source>
        <translation>Spalten der Grenzen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_header.cpp"/>
        <source>Columns of the sheet</source>
        <translation>Spalten des Blatts</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_panel.cpp"/>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_rest.cpp"/>
        <source>Common practice for light, fast work. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) gives 2 to 3 min for heavy power work.</source>
        <translation>Übliche Praxis für leichte, schnelle Arbeit. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) nennt 2 bis 3 min für schwere Schnellkraftarbeit.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/wording.cpp"/>
        <source>Common practice.</source>
        <translation>Übliche Praxis.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pattern_missing.cpp"/>
        <source>Common practice. Iversen et al. 2021 (Sports Med 51:2079-2095) name as the least one leg press pattern, one upper pull and one upper push.</source>
        <translation>Übliche Praxis. Iversen et al. 2021 (Sports Med 51:2079-2095) nennen als das Mindeste ein Beinpressmuster, ein Ziehen und ein Drücken des Oberkörpers.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>Common practice: no position stand gives a ratio of push to pull sets. What is published is about strength, not sets (Negrete et al. 2013, Int J Sports Phys Ther 8(2):138-144).</source>
        <translation>Übliche Praxis: kein Positionspapier nennt ein Verhältnis von Druck- zu Zugsätzen. Veröffentlichtes betrifft Kraft, nicht Sätze (Negrete et al. 2013, Int J Sports Phys Ther 8(2):138-144).</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Common practice: no position stand gives such a number.</source>
        <translation>Übliche Praxis: kein Positionspapier nennt eine solche Zahl.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>Common practice: no position stand gives such a number. Overhead work rightly yields to the shoulders of a class.</source>
        <translation>Übliche Praxis: kein Positionspapier nennt eine solche Zahl. Überkopfarbeit tritt zu Recht hinter die Schultern eines Kurses zurück.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Common practice: no position stand says how much of each plane a session needs. Most loaded lifts are sagittal by nature.</source>
        <translation>Übliche Praxis: kein Positionspapier sagt, wie viel von jeder Ebene eine Einheit braucht. Die meisten Übungen mit Last sind von Natur aus sagittal.</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>Copy the version</source>
        <translation>Version kopieren</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Cut the rounds of group %1 from %2 to %3: %4 less waiting for each</source>
        <translation>Runden von Gruppe %1 von %2 auf %3 senken: %4 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <location filename="../../src/core/rules/remedies_time.cpp"/>
        <source>Cut the rounds of group %1 from %2 to %3: saves %4</source>
        <translation>Runden von Gruppe %1 von %2 auf %3 senken: spart %4</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/trend_chart.cpp"/>
        <source>Days of the exercise</source>
        <translation>Tage der Übung</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Days of the week on which %1 has results</source>
        <translation>Wochentage, an denen %1 Ergebnisse hat</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>Does not fit: %1%2. Take a larger paper, turn it, or shorten the text.</source>
        <translation>Passt nicht: %1%2. Größeres Papier nehmen, es drehen oder den Text kürzen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Draft a month&apos;s class, check it by computing, print its sheets.</source>
        <translation>Den Kurs eines Monats entwerfen, durch Rechnen prüfen, seine Blätter drucken.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Drag a step, or press Up and Down; type what is left in reserve. R: rounds, I: intent.</source>
        <translation>Eine Stufe ziehen oder Auf und Ab drücken; tippen, was in Reserve bleibt. R: Runden, I: Absicht.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>Each large muscle group gets its hard sets in a week.</source>
        <translation>Jede große Muskelgruppe bekommt in einer Woche ihre harten Sätze.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>Each section as planned, talk included, keeps to its budget of time.</source>
        <translation>Jeder Abschnitt hält, wie geplant und mit Ansprache, sein Zeitbudget ein.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>Each strength and finisher exercise has an easier and a harder option on the Shelf, or says why not.</source>
        <translation>Jede Kraft- und Finisherübung hat im Regal eine leichtere und eine schwerere Variante oder sagt, warum nicht.</translation>
    </message>
    <message>
        <location filename="../../src/core/ramp/session_load.cpp"/>
        <source>Effort is reckoned as 10 less the repetitions in reserve, not asked half an hour after the session, as the method has it.</source>
        <translation>Anstrengung wird als 10 minus Wiederholungen in Reserve gerechnet, nicht eine halbe Stunde nach der Einheit erfragt, wie die Methode es vorsieht.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_paint.cpp"/>
        <source>Effort of the weeks</source>
        <translation>Anstrengung der Wochen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_table.cpp"/>
        <source>Enter goes to all of an exercise; letters go to the filter.</source>
        <translation>Die Eingabetaste zeigt alles zu einer Übung; Buchstaben gehen in den Filter.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/tally_list.cpp"/>
        <source>Enter goes to the rows that feed a pattern, Space marks them.</source>
        <translation>Die Eingabetaste geht zu den Zeilen, die ein Muster speisen, die Leertaste markiert sie.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/accepted_fold.cpp"/>
        <source>Enter goes to the rows, A takes the acceptance back, L shows its limit, R its rule.</source>
        <translation>Die Eingabetaste geht zu den Zeilen, A nimmt die Zustimmung zurück, L zeigt die Grenze, R die Regel.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <source>Enter goes to the rows, T tries the first thing, A accepts it, L shows its limit, R its rule, the menu key offers everything.</source>
        <translation>Die Eingabetaste geht zu den Zeilen, T probiert den ersten Rat, A akzeptiert, L zeigt die Grenze, R die Regel, die Menütaste bietet alles.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/reason_line.cpp"/>
        <source>Enter keeps it, Esc leaves</source>
        <translation>Eingabetaste behält, Esc verlässt</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_view.cpp"/>
        <source>Enter opens a line, Delete empties it, Esc leads back.</source>
        <translation>Die Eingabetaste öffnet eine Zeile, Entf leert sie, Esc führt zurück.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_table.cpp"/>
        <source>Enter opens this house&apos;s value, Delete takes it out.</source>
        <translation>Die Eingabetaste öffnet den Wert dieses Hauses, Entf nimmt ihn heraus.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_table.cpp"/>
        <source>Enter, or typing, opens what a line says.</source>
        <translation>Die Eingabetaste oder Tippen öffnet, was eine Zeile sagt.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>Equation for one repetition: 1 Epley, 2 Brzycki, 3 Lombardi, 4 Lander, 5 Mayhew, 6 O&apos;Conner, 7 Wathan.</source>
        <translation>Formel für eine Wiederholung: 1 Epley, 2 Brzycki, 3 Lombardi, 4 Lander, 5 Mayhew, 6 O&apos;Conner, 7 Wathan.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Erase %1</source>
        <translation>%1 löschen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Erase a member</source>
        <translation>Mitglied löschen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Ever&amp;y sheet as PDF…</source>
        <translation>&amp;Jedes Blatt als PDF…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Every &amp;sheet as PDF…</source>
        <translation>&amp;Jedes Blatt als PDF…</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Every section keeps to its budget</source>
        <translation>Jeder Abschnitt hält sein Budget ein</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Everybody gets to the last round of every group</source>
        <translation>Jeder kommt bis zur letzten Runde jeder Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_actions.cpp"/>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>Exercise can hurt people. Members are screened before they start. Stop on pain, dizziness, chest discomfort or unusual breathlessness. Medical questions go to a licensed professional. Local codes and the gym&apos;s own emergency plan come first. Blockwright never diagnoses and never clears a member: a flag only makes it look for another exercise, and a licensed professional decides.</source>
        <translation>Training kann Menschen verletzen. Mitglieder werden vor Beginn befragt und geprüft. Bei Schmerz, Schwindel, Brustbeschwerden oder ungewöhnlicher Atemnot aufhören. Medizinische Fragen gehören zu einer zugelassenen Fachperson. Örtliche Vorschriften und der Notfallplan des Studios gehen vor. Blockwright stellt nie Diagnosen und gibt nie ein Mitglied frei: ein Vermerk lässt es nur nach einer anderen Übung suchen, und entscheiden muss eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <source>Exercise to show</source>
        <translation>Gezeigte Übung</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <location filename="../../src/desk/ledger/class_headers.cpp"/>
        <source>Exercises</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>Exercises by month</source>
        <translation>Übungen nach Monaten</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Exercises in a group of heavy-then-long, opposed or heavy-then-fast.</source>
        <translation>Übungen in einer Gruppe bei Schwer-dann-lang, Gegensatzpaaren oder Schwer-dann-schnell.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Exercises in a group of round-trip.</source>
        <translation>Übungen in einer Gruppe beim Rundgang.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Exercises in a group of straight-heavy.</source>
        <translation>Übungen in einer Gruppe bei Einzeln-schwer.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>Exercises new to this gym: %1, fewer than %2.</source>
        <translation>Neue Übungen in diesem Studio: %1, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_table.cpp"/>
        <source>Exercises of the Shelf</source>
        <translation>Übungen des Regals</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>Exercises that are new or take skill have a caution.</source>
        <translation>Neue oder anspruchsvolle Übungen haben einen Vorsichtshinweis.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>Exercises that are new or take skill have cues.</source>
        <translation>Neue oder anspruchsvolle Übungen haben Cues.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>Exercises that can use it: %1. That need it: %2.</source>
        <translation>Übungen, die es nutzen können: %1. Die es brauchen: %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>Exercises that can&apos;t be done here now: %1 (%2).</source>
        <translation>Übungen, die hier jetzt nicht gehen: %1 (%2).</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/exercise_editor.cpp"/>
        <source>Exercises that fit what is typed</source>
        <translation>Übungen, die zum Getippten passen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>Exercises that no earlier month of this gym had. More than the band is a look, fewer a note.</source>
        <translation>Übungen, die kein früherer Monat dieses Studios hatte. Über dem Bereich ist zu prüfen, darunter nur eine Notiz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies_time.cpp"/>
        <source>Explain the %1 section before the class, not in it: saves %2</source>
        <translation>Den Abschnitt %1 vor dem Kurs erklären, nicht im Kurs: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>Family of the exercise</source>
        <translation>Familie der Übung</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>Farther</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>Fewer reps in both, or a quicker tempo</source>
        <translation>Weniger Wdh. in beiden oder ein schnelleres Tempo</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>Fewest cautions of such an exercise.</source>
        <translation>Wie viele Vorsichtshinweise eine solche Übung mindestens hat.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>Fewest cues of such an exercise.</source>
        <translation>Wie viele Cues eine solche Übung mindestens hat.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pattern_missing.cpp"/>
        <source>Fewest exercises of the session that train each of them.</source>
        <translation>Wie viele Übungen der Einheit jedes davon mindestens trainieren.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>Fewest main lifts of the newest month before that are main lifts again.</source>
        <translation>Wie viele Hauptübungen des jüngsten Monats davor mindestens wieder Hauptübungen sind.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>Fewest reps of the second set.</source>
        <translation>Mindestzahl der Wdh. im zweiten Satz.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_panel.cpp"/>
        <source>Find a command</source>
        <translation>Befehl suchen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Find a member</source>
        <translation>Mitglied suchen</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>Find it: light enough to move well to the end of the dose.</source>
        <translation>Suchen: leicht genug, um sich bis zum Ende der Dosis gut zu bewegen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/target.cpp"/>
        <source>Find it: the load for %1 repetitions with %2 in reserve.</source>
        <translation>Suchen: die Last für %1 Wiederholungen mit %2 in Reserve.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>Find limits by words</source>
        <translation>Grenzen nach Wörtern suchen</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Find words</source>
        <translation>Wörter suchen</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>Find: rest, queue, months…</source>
        <translation>Suchen: Pause, Warten, Monate…</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>Findings</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/finding_counts.cpp"/>
        <source>Findings: %1 stop, %2 look, %3 note; %4 accepted. Go to the next one</source>
        <translation>Hinweise: %1 Stopp, %2 Prüfen, %3 Notiz; %4 akzeptiert. Zum nächsten gehen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/words.cpp"/>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Finisher</source>
        <translation>Finisher</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <source>First &amp;month in ten minutes</source>
        <translation>Erster &amp;Monat in zehn Minuten</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>Fit the page</source>
        <translation>Seite einpassen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Flags</source>
        <translation>Vermerke</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>Flags: %1.</source>
        <translation>Vermerke: %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_strip.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Floor</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_strip.cpp"/>
        <source>Floor. %1</source>
        <translation>Fläche. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: %1 classes played</source>
        <translation>Fläche: %1 Kurse gespielt</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: looking for the best start</source>
        <translation>Fläche: sucht den besten Start</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: playing classes</source>
        <translation>Fläche: spielt Kurse</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: stopped</source>
        <translation>Fläche: angehalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: the class can&apos;t be played</source>
        <translation>Fläche: der Kurs ist nicht spielbar</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Floor: trying changes</source>
        <translation>Fläche: probiert Änderungen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>For %1: %2</source>
        <translation>Für %1: %2</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>For %1: leave it out; nothing on the Shelf fits</source>
        <translation>Für %1: weglassen; nichts im Regal passt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>For every set of hinging the month has %1 of squats and lunges, fewer than %2.</source>
        <translation>Auf jeden Hüftbeugesatz kommen im Monat %1 Kniebeugen und Ausfallschritte, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>For every set of hinging the month has %1 of squats and lunges, more than %2.</source>
        <translation>Auf jeden Hüftbeugesatz kommen im Monat %1 Kniebeugen und Ausfallschritte, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>For every set of pulling the month has %1 of pushing, fewer than %2.</source>
        <translation>Auf jeden Zugsatz kommen im Monat %1 Drucksätze, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>For every set of pulling the month has %1 of pushing, more than %2.</source>
        <translation>Auf jeden Zugsatz kommen im Monat %1 Drucksätze, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>For every vertical set of the upper body the month has %1 horizontal, fewer than %2.</source>
        <translation>Auf jeden vertikalen Satz des Oberkörpers kommen im Monat %1 horizontale, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>For every vertical set of the upper body the month has %1 horizontal, more than %2.</source>
        <translation>Auf jeden vertikalen Satz des Oberkörpers kommen im Monat %1 horizontale, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_sheet.cpp"/>
        <source>For the coach. In the rooms, bold comes out for this section and plain stands already. The rooms are sketches, not to scale.</source>
        <translation>Für den Coach. In den Räumen kommt Fettes für diesen Abschnitt heraus, Normales steht schon. Die Räume sind Skizzen, nicht maßstäblich.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_sheet.cpp"/>
        <source>For the coach. Not for the wall.</source>
        <translation>Für den Coach. Nicht für die Wand.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>For the sections with as many groups as numbers; the others start as drafted</source>
        <translation>Für die Abschnitte mit so vielen Gruppen wie Zahlen; die anderen starten wie entworfen</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>Format of the strength section</source>
        <translation>Format des Kraftabschnitts</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>Formats by month</source>
        <translation>Formate nach Monaten</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Forward</source>
        <translation>Vorwärts</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Found against it (%1)</source>
        <translation>Dagegen gefunden (%1)</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Found: %1</source>
        <translation>Gefunden: %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>From %1 the class goes on to %2, and both ask a lot of %3.</source>
        <translation>Von %1 geht der Kurs weiter zu %2, und beide fordern viel: %3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>From the reserve that %1’s sets tell; as planned where they tell none</source>
        <translation>Nach der Reserve, die die Sätze von %1 angeben; wie geplant, wo sie keine angeben</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>From week %1 to week %2 %3 goes from %4 to %5 left in reserve: about %6 % more weight in one week, more than %7 %.</source>
        <translation>Von Woche %1 zu Woche %2 geht %3 von %4 auf %5 in Reserve: etwa %6 % mehr Gewicht in einer Woche, mehr als %7 %.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/target.cpp"/>
        <source>From what week 1 finds: %1 repetitions with %2 in reserve.</source>
        <translation>Nach dem, was Woche 1 findet: %1 Wiederholungen mit %2 in Reserve.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>From which demand of breath on, 1 to 3, work counts as all-out.</source>
        <translation>Ab welcher Anforderung an den Atem, 1 bis 3, Arbeit als voller Einsatz zählt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>From which demand on, 1 to 3, both ask a lot. Within a round a coach should look; across the round&apos;s end and from group to group it is only noted.</source>
        <translation>Ab welcher Anforderung, 1 bis 3, beide viel fordern. Innerhalb einer Runde ist zu prüfen; über das Rundenende und von Gruppe zu Gruppe ist es nur eine Notiz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>From which skill on, 1 to 3, a known exercise needs a caution too.</source>
        <translation>Ab welchem Können, 1 bis 3, auch eine bekannte Übung einen Vorsichtshinweis braucht.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>From which skill on, 1 to 3, a known exercise needs cues too.</source>
        <translation>Ab welchem Können, 1 bis 3, auch eine bekannte Übung Cues braucht.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>Give the %1 section a budget of %2</source>
        <translation>Dem Abschnitt %1 ein Budget von %2 geben</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Go on simulating the class</source>
        <translation>Den Kurs weiter simulieren</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>Go through group %1 once</source>
        <translation>Gruppe %1 einmal durchlaufen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Go to a line of the section first.</source>
        <translation>Erst auf eine Zeile des Abschnitts gehen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Go to a slot first: a proposal for one slot fills it, or exchanges what stands there.</source>
        <translation>Erst auf einen Slot gehen: ein Vorschlag für einen Slot füllt ihn oder tauscht aus, was dort steht.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Go to the &amp;beam</source>
        <translation>Zur &amp;Waage</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Go to the fin&amp;dings</source>
        <translation>Zu den Hin&amp;weisen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/finding_counts.cpp"/>
        <source>Go to the next finding</source>
        <translation>Zum nächsten Hinweis</translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/finding_counts.cpp"/>
        <source>Go to the next finding (%n accepted, not counted)</source>
        <translation>
            <numerusform>Zum nächsten Hinweis (%n akzeptiert, nicht gezählt)</numerusform>
            <numerusform>Zum nächsten Hinweis (%n akzeptiert, nicht gezählt)</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>Go to the rows</source>
        <translation>Zu den Zeilen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Grgic et al. 2018 (Sports Med 48:137-151): more than 2 min for trained lifters, 60 to 120 s enough for untrained. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) gives longer rests for the heaviest loads. The upper end is common practice in an hour&apos;s class.</source>
        <translation>Grgic et al. 2018 (Sports Med 48:137-151): über 2 min für Trainierte, 60 bis 120 s genügen Untrainierten. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) nennt längere Pausen für die schwersten Lasten. Das obere Ende ist übliche Praxis in einer Kursstunde.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>Grgic et al., Sports Med Open 2020;6:31: tested again, the load that can be lifted once differs by 4.2 % (median of 32 studies).</source>
        <translation>Grgic et al., Sports Med Open 2020;6:31: bei wiederholtem Test weicht die einmal hebbare Last um 4,2 % ab (Median aus 32 Studien).</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Group %1 has %2 exercises; in straight-heavy each lift stands alone.</source>
        <translation>Gruppe %1 hat %2 Übungen; bei Einzeln-schwer steht jede Übung allein.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Group %1 has %2; %5 pairs two exercises.</source>
        <translation>Gruppe %1 hat %2; %5 paart zwei Übungen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Group %1 has %2; a round-trip goes through %3 to %4 exercises.</source>
        <translation>Gruppe %1 hat %2; ein Rundgang führt durch %3 bis %4 Übungen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>Group %1 is open up to round %2, and %3 of the members get there in the simulated class.</source>
        <translation>Gruppe %1 ist bis Runde %2 offen, und %3 der Mitglieder kommen im simulierten Kurs so weit.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>Group %1 is open up to round %2, and nobody gets there in the simulated class.</source>
        <translation>Gruppe %1 ist bis Runde %2 offen, und niemand kommt im simulierten Kurs so weit.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_rest.cpp"/>
        <source>Group %1 rests %2 between power rounds, more than the usual %3. Right for heavy power work; for light, fast work it costs the class time.</source>
        <translation>Gruppe %1 pausiert %2 zwischen Schnellkraftrunden, mehr als die üblichen %3. Richtig für schwere Schnellkraft; bei leichter, schneller Arbeit kostet es den Kurs Zeit.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_rest.cpp"/>
        <source>Group %1 rests %2 between power rounds; speed needs %3, or the later rounds turn into conditioning.</source>
        <translation>Gruppe %1 pausiert %2 zwischen Schnellkraftrunden; Tempo braucht %3, sonst werden die späteren Runden zu Kondition.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Group %1 rests %2 between rounds, longer than %3: the class stands about.</source>
        <translation>Gruppe %1 pausiert %2 zwischen den Runden, länger als %3: der Kurs steht herum.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Group %1 rests %2 between rounds, shorter than %3: the next round would have to be lighter.</source>
        <translation>Gruppe %1 pausiert %2 zwischen den Runden, kürzer als %3: die nächste Runde müsste leichter sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Gym</source>
        <translation>Studio</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Gym and &amp;kit…</source>
        <translation>Studio und Ge&amp;räte…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>Gym and kit</source>
        <translation>Studio und Geräte</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/status_line.cpp"/>
        <source>Gym file</source>
        <translation>Studiodatei</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Gym files (*.bwgym);;All files (*)</source>
        <translation>Studiodateien (*.bwgym);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>Haff and Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed. 2016, table 3.6: rest 12 to 20 times the work after 5 to 10 s, 3 to 5 times after 15 to 30 s. Nothing is said between the rows.</source>
        <translation>Haff und Triplett (Hrsg.), Essentials of Strength Training and Conditioning, 4. Aufl. 2016, Tabelle 3.6: Pause 12- bis 20-mal die Arbeit nach 5 bis 10 s, 3- bis 5-mal nach 15 bis 30 s. Zwischen den Zeilen ist nichts gesagt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Half a repetition less in reserve</source>
        <translation>Eine halbe Wiederholung weniger in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Half a repetition more in reserve</source>
        <translation>Eine halbe Wiederholung mehr in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Half of %1 classes end by %2, 8 in 10 between %3 and %4, %5 after %6</source>
        <translation>Die Hälfte von %1 Kursen endet bis %2, 8 von 10 zwischen %3 und %4, %5 nach %6</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>Hard sets a week, all visits together: quadriceps, hamstrings, glutes, chest, upper back, lats.</source>
        <translation>Harte Sätze je Woche, alle Besuche zusammen: Quadrizeps, Beinbeuger, Gesäß, Brust, oberer Rücken, Latissimus.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>Hard sets in a week for %1: %2, fewer than %3.</source>
        <translation>Harte Sätze in einer Woche: %1: %2, weniger als %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>Hard sets in a week for %1: %2, more than %3.</source>
        <translation>Harte Sätze in einer Woche: %1: %2, mehr als %3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>Heads per group</source>
        <translation>Köpfe je Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Heavy-then-fast</source>
        <translation>Schwer-dann-schnell</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Heavy-then-long</source>
        <translation>Schwer-dann-lang</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>Hel&amp;d</source>
        <translation>&amp;Lage</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>Held back: at most %1 % above the last load, %2 at these repetitions.</source>
        <translation>Zurückgehalten: höchstens %1 % über der letzten Last, %2 bei diesen Wiederholungen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/help_actions.cpp"/>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>High &amp;contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>Horizontal sets of the upper body for every vertical one, in the month.</source>
        <translation>Horizontale Sätze des Oberkörpers je vertikalem, im Monat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>House &amp;limits…</source>
        <translation>Haus&amp;grenzen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <location filename="../../src/desk/limits/limits_table.cpp"/>
        <source>House limits</source>
        <translation>Hausgrenzen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>How far outside its budget a section may be before a coach should look.</source>
        <translation>Wie weit ein Abschnitt außerhalb seines Budgets liegen darf, bevor zu prüfen ist.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>How far the flag goes</source>
        <translation>Wie weit der Vermerk reicht</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>How far the simulated class is</source>
        <translation>Wie weit der simulierte Kurs ist</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/session_length.cpp"/>
        <source>How full a class may be planned before a coach should look. Above the whole class it can&apos;t be run.</source>
        <translation>Wie voll ein Kurs geplant sein darf, bevor zu prüfen ist. Über den ganzen Kurs hinaus ist er nicht durchführbar.</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_pages.cpp"/>
        <source>How it is reckoned</source>
        <translation>Wie gerechnet wird</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_queue.cpp"/>
        <source>How long a member may wait for one kit item, on average, before a coach should look.</source>
        <translation>Wie lange ein Mitglied im Mittel auf ein Gerät warten darf, bevor zu prüfen ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>How many exercises of a heavy-then-fast pair come second and are explosive.</source>
        <translation>Wie viele Übungen eines Paars bei Schwer-dann-schnell als zweite kommen und explosiv sind.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>How many members may be left without a word at a slot.</source>
        <translation>Wie viele Mitglieder an einem Slot ohne Auskunft bleiben dürfen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>How many months</source>
        <translation>Wie viele Monate</translation>
    </message>
    <message>
        <location filename="../../src/core/balance/balance_limits.cpp"/>
        <source>How many months the window of the balance holds, this one among them; 1 to 36.</source>
        <translation>Wie viele Monate das Zeitfenster der Waage umfasst, dieser mitgezählt; 1 bis 36.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overrun_chance.cpp"/>
        <source>How many of the simulated classes may run over before a coach should look.</source>
        <translation>Wie viele der simulierten Kurse überziehen dürfen, bevor zu prüfen ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>How many of the two ways, easier and harder, must be open to members.</source>
        <translation>Wie viele der beiden Wege, leichter und schwerer, den Mitgliedern offenstehen müssen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>How many repetitions fewer in reserve the last week leaves than the first, at least.</source>
        <translation>Wie viele Wiederholungen weniger in Reserve die letzte Woche mindestens lässt als die erste.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>How many strength sections may stand before a power section.</source>
        <translation>Wie viele Kraftabschnitte vor einem Schnellkraftabschnitt stehen dürfen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_short.cpp"/>
        <source>How many units of a kit item may be missing, if they will be borrowed.</source>
        <translation>Wie viele Stück eines Geräts fehlen dürfen, wenn sie ausgeliehen werden.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>How many weeks may leave more in reserve than the week before.</source>
        <translation>Wie viele Wochen mehr in Reserve lassen dürfen als die Woche davor.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>How members start</source>
        <translation>Wie Mitglieder starten</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>How mixed the class is</source>
        <translation>Wie gemischt der Kurs ist</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>How much a set of this section counts beside a strength set, in the balance of patterns: 0 to 1.</source>
        <translation>Wie viel ein Satz dieses Abschnitts neben einem Kraftsatz zählt, im Gleichgewicht der Muster: 0 bis 1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>How much members differ in pace, and one member&apos;s sets from each other</source>
        <translation>Wie sehr sich Mitglieder im Tempo unterscheiden, und die Sätze eines Mitglieds voneinander</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>How much of a pair must be of the same or a neighbouring pattern (heavy-then-long, heavy-then-fast) or of opposite ones (opposed).</source>
        <translation>Wie viel eines Paars dasselbe oder ein benachbartes Muster haben muss (Schwer-dann-lang, Schwer-dann-schnell) oder gegensätzliche (Gegensatzpaare).</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pattern_missing.cpp"/>
        <source>How much of an exercise must be of a pattern for it to count as training it.</source>
        <translation>Wie viel einer Übung zu einem Muster gehören muss, damit sie als Training dafür zählt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_line.cpp"/>
        <source>How much of the proposal is proved, in per cent</source>
        <translation>Wie weit der Vorschlag bewiesen ist, in Prozent</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>How much of the table&apos;s shortest rest there must be.</source>
        <translation>Wie viel von der kürzesten Pause der Tabelle da sein muss.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>How much strength may change in a day, as a standard deviation.</source>
        <translation>Wie sehr sich die Kraft an einem Tag ändern kann, als Standardabweichung.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>How much the form of a day differs, as a standard deviation.</source>
        <translation>Wie sehr die Tagesform schwankt, als Standardabweichung.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>How often a member comes in a week</source>
        <translation>Wie oft ein Mitglied in der Woche kommt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>How should %1 begin? %2 stays as it is.</source>
        <translation>Wie soll %1 beginnen? %2 bleibt, wie es ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>How varied a class is goes from 0 to 1.</source>
        <translation>Wie verschieden ein Kurs ist, geht von 0 bis 1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>In %1 nothing is found against it.</source>
        <translation>Im %1 ist nichts dagegen gefunden.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>In %1: %2.</source>
        <translation>In %1: %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>In a bundle: %1</source>
        <translation>In einem Bündel: %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>In a week with open rounds members get to the highest round.</source>
        <translation>In einer Woche mit offenen Runden kommen Mitglieder bis zur höchsten Runde.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>In heavy-then-long the heavy set leads and the second set is long.</source>
        <translation>Bei Schwer-dann-lang führt der schwere Satz, und der zweite ist lang.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_queue.cpp"/>
        <source>In the simulated class a member waits %1 for “%2” on average, one in ten longer than %3; the gym has %4.</source>
        <translation>Im simulierten Kurs wartet ein Mitglied im Mittel %1 auf „%2“, eines von zehn länger als %3; das Studio hat %4.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_queue.cpp"/>
        <source>In the simulated class nobody waits long for one kit item.</source>
        <translation>Im simulierten Kurs wartet niemand lange auf ein Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>Instead, in other slots</source>
        <translation>Stattdessen, in anderen Slots</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>Instead: %1</source>
        <translation>Stattdessen: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>It can&apos;t be restored. %1</source>
        <translation>Sie lässt sich nicht wiederherstellen. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>It is being read…</source>
        <translation>Sie wird gelesen…</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>It is measured in %1, so it needs a pace for that, such as %2.</source>
        <translation>Es wird in %1 gemessen, braucht also dafür ein Tempo, etwa %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>It reads well, but is not byte for byte as made: somebody changed it, or the disk did. Look the gym through afterwards.</source>
        <translation>Sie ist lesbar, aber nicht Byte für Byte wie angelegt: jemand hat sie geändert, oder der Datenträger hat es. Das Studio danach durchsehen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>Its weights make %1, not %2.</source>
        <translation>Die Gewichte ergeben %1, nicht %2.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Keep all sheets as PDF</source>
        <translation>Alle Blätter als PDF ablegen</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Keep as PDF</source>
        <translation>Als PDF ablegen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies_time.cpp"/>
        <source>Keep every rest at its short end: saves %1</source>
        <translation>Jede Pause an ihrem kurzen Ende halten: spart %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies_time.cpp"/>
        <source>Keep every rest of this section at its short end: saves %1</source>
        <translation>Jede Pause dieses Abschnitts an ihrem kurzen Ende halten: spart %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>Keep one of them for another month</source>
        <translation>Eine davon noch einen Monat behalten</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>Keep one of them for next month</source>
        <translation>Eine davon für den nächsten Monat aufheben</translation>
    </message>
    <message>
        <location filename="../../src/store/migrations.cpp"/>
        <source>Keep what a member lifted in an exercise side by side.</source>
        <translation>Was ein Mitglied in einer Übung gehoben hat, nebeneinander aufbewahren.</translation>
    </message>
    <message>
        <location filename="../../src/store/migrations.cpp"/>
        <source>Keep with a month the findings that its coach accepted.</source>
        <translation>Zu einem Monat die Hinweise behalten, die der Coach akzeptiert hat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Kept as %1.</source>
        <translation>Abgelegt als %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>Kept in the folder %1 beside the gym file. Choose one to see what it holds.</source>
        <translation>Im Ordner %1 neben der Studiodatei. Eine wählen, um zu sehen, was sie enthält.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/key_sheet.cpp"/>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <location filename="../../src/desk/gym/kit_table.cpp"/>
        <source>Kit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>Kit and queues are worked out for so many members.</source>
        <translation>Geräte und Warten werden für so viele Mitglieder gerechnet.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>Kit needs a name.</source>
        <translation>Ein Gerät braucht einen Namen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>Kit that tells its loads is taken by the load: each member as in their latest result</source>
        <translation>Geräte mit angegebenen Lasten werden nach der Last genommen: jedes Mitglied wie in seinem letzten Ergebnis</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>Kit, members and starts are being tried…</source>
        <translation>Geräte, Mitglieder und Starts werden durchprobiert…</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>L&amp;anes</source>
        <translation>Bah&amp;nen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>Lanes and machines</source>
        <translation>Bahnen und Maschinen</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_lanes.cpp"/>
        <source>Lanes of the class</source>
        <translation>Bahnen des Kurses</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_lanes.cpp"/>
        <source>Lanes. %1</source>
        <translation>Bahnen. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>Language of the s&amp;ystem</source>
        <translation>Sprache des S&amp;ystems</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Language: system, en or de.</source>
        <translation>Sprache: system, en oder de.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Learn the movements and find your loads.</source>
        <translation>Die Bewegungen lernen und die eigenen Lasten finden.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Leave</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>Leave %1 in reserve in week %2</source>
        <translation>%1 in Reserve lassen in Woche %2</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Leave %1.</source>
        <translation>%1 lassen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>Leave one more repetition in reserve in %1 than in %2</source>
        <translation>Bei %1 eine Wiederholung mehr in Reserve lassen als bei %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Leave the draft as it was</source>
        <translation>Den Entwurf lassen, wie er war</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Ledger</source>
        <translation>Ergebnisbuch</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>Let the effort rise evenly: %1 left in reserve</source>
        <translation>Die Anstrengung gleichmäßig steigen lassen: %1 in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <source>Limit…</source>
        <translation>Grenze…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>Line %1 says the same set with other figures.</source>
        <translation>Zeile %1 nennt denselben Satz mit anderen Zahlen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/csv_text.cpp"/>
        <source>Line %1: a quote stands where none may stand. Within quotes write it twice.</source>
        <translation>Zeile %1: ein Anführungszeichen steht, wo keines stehen darf. In Anführungszeichen doppelt schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Load of the week × monotony</source>
        <translation>Last der Woche × Monotonie</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_page.cpp"/>
        <source>Load of the weeks</source>
        <translation>Last der Wochen</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>Loads &amp;in</source>
        <translation>Lasten &amp;in</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Lock the slot</source>
        <translation>Slot sperren</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>Locked against proposals</source>
        <translation>Gesperrt gegen Vorschläge</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Longer than its budget is %1</source>
        <translation>Länger als sein Budget ist %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Look at its backups…</source>
        <translation>Seine Sicherungen ansehen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Look through its lines: only the name is yours so far. Enter opens one.</source>
        <translation>Die Zeilen durchsehen: bisher ist nur der Name eigen. Die Eingabetaste öffnet eine.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_line.cpp"/>
        <source>Looking for proposals</source>
        <translation>Sucht Vorschläge</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Looking for the best…</source>
        <translation>Sucht das Beste…</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Looking for the best… so far penalty %1, none can be below %2</source>
        <translation>Sucht das Beste… bisher Strafpunkte %1, darunter kann keines liegen als %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Main lift</source>
        <translation>Hauptübung</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>Main lift of the month</source>
        <translation>Hauptübung des Monats</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Main lifts and formats change from time to time.</source>
        <translation>Hauptübungen und Formate wechseln von Zeit zu Zeit.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Main lifts carried on: %1.</source>
        <translation>Fortgeführte Hauptübungen: %1.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>Make the first set the heavy one: fewer reps, fewer left in reserve</source>
        <translation>Den ersten Satz zum schweren machen: weniger Wdh., weniger in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Make the month %1, and look at its pairs again</source>
        <translation>Den Monat %1 nennen und seine Paare neu ansehen</translation>
    </message>
    <message>
        <location filename="../../src/store/migrations.cpp"/>
        <source>Make the tables for a gym, its months, its members and their results.</source>
        <translation>Die Tabellen für ein Studio, seine Monate, Mitglieder und Ergebnisse anlegen.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>Mark %1 as a main lift</source>
        <translation>%1 als Hauptübung markieren</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>Marks in the lanes: %1</source>
        <translation>Zeichen in den Bahnen: %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Mean of the days over their standard deviation</source>
        <translation>Mittel der Tage durch ihre Standardabweichung</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Meaning of the column “%1”</source>
        <translation>Bedeutung der Spalte „%1“</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>Measured in %1 it needs a pace for that: write it on the line “pace” first.</source>
        <translation>In %1 gemessen braucht es dafür ein Tempo: erst auf der Zeile „Tempo“ angeben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>Mem&amp;ber</source>
        <translation>Mit&amp;glied</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>Mem&amp;bers</source>
        <translation>Mit&amp;glieder</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <source>Member</source>
        <translation>Mitglied</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Member %1</source>
        <translation>Mitglied %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>Member whose loads are shown</source>
        <translation>Mitglied, dessen Lasten gezeigt werden</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <location filename="../../src/desk/ledger/class_headers.cpp"/>
        <source>Members</source>
        <translation>Mitglieder</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>Members in the class</source>
        <translation>Mitglieder im Kurs</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Members should be screened before they start. Stop on pain, dizziness or chest discomfort. Take medical questions to a licensed professional. Local codes and the gym’s own emergency plan come first.</source>
        <translation>Mitglieder sollten vor Beginn befragt und geprüft werden. Bei Schmerz, Schwindel oder Brustbeschwerden aufhören. Medizinische Fragen gehören zu einer zugelassenen Fachperson. Örtliche Vorschriften und der Notfallplan des Studios gehen vor.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>Members whose flags meet an exercise have another one ready.</source>
        <translation>Mitglieder, deren Vermerke eine Übung treffen, haben eine andere bereit.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail.cpp"/>
        <location filename="../../src/desk/bench/minute_rail_paint.cpp"/>
        <source>Minute rail</source>
        <translation>Minutenleiste</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail.cpp"/>
        <source>Minute rail. %1</source>
        <translation>Minutenleiste. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>Minutes of each class after the finisher: tidying up, goodbye.</source>
        <translation>Minuten jedes Kurses nach dem Finisher: aufräumen, verabschieden.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>Minutes of each class before the warm-up: arriving, a word of welcome.</source>
        <translation>Minuten jedes Kurses vor dem Aufwärmen: ankommen, begrüßen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ramp/session_load.cpp"/>
        <source>Minutes times effort say how much of a strain a week was felt to be. They are for information: no limit is known that holds for everybody.</source>
        <translation>Minuten mal Anstrengung sagen, wie sehr eine Woche als Belastung empfunden wurde. Sie dienen der Information: eine Grenze, die für alle gilt, ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Minutes × RPE, over the visits of the week</source>
        <translation>Minuten × RPE, über die Besuche der Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_stepper.cpp"/>
        <source>Month: %1. All months</source>
        <translation>Monat: %1. Alle Monate</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_headers.cpp"/>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <location filename="../../src/desk/frame/command_lines.cpp"/>
        <source>Months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>More hinging, or fewer squats and lunges</source>
        <translation>Mehr Hüftbeugen oder weniger Kniebeugen und Ausfallschritte</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>More pulling or less pushing</source>
        <translation>Mehr ziehen oder weniger drücken</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>More pushing or less pulling</source>
        <translation>Mehr drücken oder weniger ziehen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>More reps in both, or a slower tempo</source>
        <translation>Mehr Wdh. in beiden oder ein langsameres Tempo</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>More squats or lunges, or less hinging</source>
        <translation>Mehr Kniebeugen oder Ausfallschritte oder weniger Hüftbeugen</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>More than 100 sets of an exercise on one day.</source>
        <translation>Mehr als 100 Sätze einer Übung an einem Tag.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>Most reps a side in a power set before a coach should look.</source>
        <translation>Die meisten Wdh. je Seite in einem Schnellkraftsatz, bevor zu prüfen ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>Most reps a side that can still be called a power set.</source>
        <translation>Die meisten Wdh. je Seite, die noch Schnellkraftsatz heißen können.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>Most that the weight of the set with the fewest repetitions may rise from one week to the next, as the stair&apos;s reserve and Epley&apos;s formula (1985) have it.</source>
        <translation>Wie viel das Gewicht des Satzes mit den wenigsten Wiederholungen von Woche zu Woche höchstens steigt, nach der Reserve der Treppe und der Formel von Epley (1985).</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Move an exercise of group %1 to a group of its own kind</source>
        <translation>Eine Übung von Gruppe %1 in eine Gruppe ihrer Art verschieben</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Move group %1 before %2: %3 less waiting for each</source>
        <translation>Gruppe %1 vor %2 rücken: %3 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Move group %1 before %2: saves %3</source>
        <translation>Gruppe %1 vor %2 rücken: spart %3</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Move group %1 behind %2: %3 less waiting for each</source>
        <translation>Gruppe %1 hinter %2 rücken: %3 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Move group %1 behind %2: saves %3</source>
        <translation>Gruppe %1 hinter %2 rücken: spart %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Move the group down</source>
        <translation>Gruppe nach unten rücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Move the group up</source>
        <translation>Gruppe nach oben rücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Move the line down</source>
        <translation>Zeile nach unten rücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Move the line up</source>
        <translation>Zeile nach oben rücken</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>Move the power section to before the strength section</source>
        <translation>Den Schnellkraftabschnitt vor den Kraftabschnitt rücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>N&amp;ext month</source>
        <translation>&amp;Nächster Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <source>Name and &amp;flags…</source>
        <translation>Name und Vermer&amp;ke…</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Name and flags</source>
        <translation>Name und Vermerke</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Name of the copy of %1</source>
        <translation>Name der Kopie von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>Name of the gym</source>
        <translation>Name des Studios</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Name of the new exercise</source>
        <translation>Name der neuen Übung</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>Name of the new gym</source>
        <translation>Name des neuen Studios</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Name one gym file; a window shows one gym.</source>
        <translation>Eine einzige Studiodatei nennen; ein Fenster zeigt ein Studio.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>Name this month</source>
        <translation>Diesen Monat benennen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_headers.cpp"/>
        <source>Names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>Names and doses are at least %1 mm high: read with ease at %2 m, and just about at %3 m.</source>
        <translation>Namen und Dosen sind mindestens %1 mm hoch: gut lesbar aus %2 m, gerade noch aus %3 m.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>New against %1</source>
        <translation>Neu gegenüber %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>New: %1</source>
        <translation>Neu: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Newest result</source>
        <translation>Neuestes Ergebnis</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Next &amp;finding</source>
        <translation>Nächster &amp;Hinweis</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <source>Next: %1</source>
        <translation>Nächstes: %1</translation>
    </message>
    <message>
        <location filename="../../src/store/backing_up.cpp"/>
        <source>No backup of “%1” was made (%2). The gym file holds all that was stored, as before, and you can go on. Free some space on that disk, or allow writing to “%3”; then it is made the next time.</source>
        <translation>Von „%1“ wurde keine Sicherung angelegt (%2). Die Studiodatei enthält wie zuvor alles Gespeicherte, die Arbeit kann weitergehen. Platz auf dem Datenträger schaffen oder das Schreiben nach „%3“ erlauben; dann wird sie beim nächsten Mal angelegt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>No exercise fits all of these words. Take one away, or add an exercise with Ctrl+Shift+N.</source>
        <translation>Zu all diesen Wörtern passt keine Übung. Eines wegnehmen oder mit Strg+Umschalt+N eine Übung hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>No exercise fits these words.</source>
        <translation>Zu diesen Wörtern passt keine Übung.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>No exercise is new.</source>
        <translation>Keine Übung ist neu.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_sayings.cpp"/>
        <source>No exercise of the Shelf asks for it.</source>
        <translation>Keine Übung des Regals verlangt danach.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>No exercise of this session is counted in repetitions. Fill its slots on the Bench, or look at warm-up and finisher, too.</source>
        <translation>Keine Übung dieser Einheit wird in Wiederholungen gezählt. Ihre Slots auf der Werkbank füllen oder auch Aufwärmen und Finisher ansehen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>No limit has all of these words.</source>
        <translation>Keine Grenze hat all diese Wörter.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_setter.cpp"/>
        <source>No loads to choose here.</source>
        <translation>Hier sind keine Lasten zu wählen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/carry_over.cpp"/>
        <source>No main lift is carried over from last month, which had: %1. Members begin everything anew.</source>
        <translation>Keine Hauptübung ist vom letzten Monat übernommen; er hatte: %1. Mitglieder beginnen mit allem von vorn.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>No member is active, so there are no cards. Members come with a bundle.</source>
        <translation>Kein Mitglied ist aktiv, also gibt es keine Karten. Mitglieder kommen mit einem Bündel.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_setter.cpp"/>
        <source>No member is active.</source>
        <translation>Kein Mitglied ist aktiv.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>No member&apos;s name has these letters.</source>
        <translation>Kein Mitgliedsname hat diese Buchstaben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>No members yet. Add the first with Member, Add a member, or bring a bundle in.</source>
        <translation>Noch keine Mitglieder. Das erste mit Mitglied, Mitglied hinzufügen eintragen oder ein Bündel einlesen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_stepper.cpp"/>
        <source>No month yet</source>
        <translation>Noch kein Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_stepper.cpp"/>
        <source>No month yet. Start one</source>
        <translation>Noch kein Monat. Einen beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <source>No results of it yet. Type them into the grid: 40x5 2 for 40 at 5 repetitions with 2 left.</source>
        <translation>Dazu noch keine Ergebnisse. In das Raster tippen: 40x5 2 für 40 bei 5 Wiederholungen mit 2 übrig.</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>No section has %1 groups, so %1 head counts fit nowhere.</source>
        <translation>Kein Abschnitt hat %1 Gruppen, also passen %1 Kopfzahlen nirgends.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <source>Nobody is written down for this day yet.</source>
        <translation>Für diesen Tag ist noch niemand eingetragen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>Nobody waits for kit</source>
        <translation>Niemand wartet auf Geräte</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>None of its %2 exercises has the role %3.</source>
        <translation>Keine der %2 Übungen hat die Rolle %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>None of the %2 of its role and pattern can be timed by the dose %3.</source>
        <translation>Für keine der %2 mit dieser Rolle und diesem Muster lässt sich bei der Dosis %3 die Zeit rechnen.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>None of the %2 of its role is mainly of the pattern %3.</source>
        <translation>Keine der %2 mit dieser Rolle hat vor allem das Muster %3.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Not taken any more: %1.</source>
        <translation>Nicht mehr dabei: %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>Note for this slot</source>
        <translation>Notiz zum Slot</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Note of the flag</source>
        <translation>Notiz zum Vermerk</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Nothing changes in this month.</source>
        <translation>In diesem Monat ändert sich nichts.</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Nothing has all of these words.</source>
        <translation>Nichts hat all diese Wörter.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>Nothing in this month is new to this gym.</source>
        <translation>Nichts in diesem Monat ist neu in diesem Studio.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Nothing in this month meets it.</source>
        <translation>Nichts in diesem Monat betrifft es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Nothing in this month moves forwards or up and down.</source>
        <translation>Nichts in diesem Monat geht vorwärts oder auf und ab.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Nothing in this month moves sideways.</source>
        <translation>Nichts in diesem Monat geht seitwärts.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Nothing in this month turns or resists turning.</source>
        <translation>Nichts in diesem Monat dreht oder widersteht einer Drehung.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Nothing in this month works one side at a time.</source>
        <translation>Nichts in diesem Monat ist einseitig.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a hinge.</source>
        <translation>Nichts in dieser Einheit trainiert eine Hüftbeuge.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a hinge; the open slot %1 could.</source>
        <translation>Nichts in dieser Einheit trainiert eine Hüftbeuge; der offene Slot %1 könnte es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a pull.</source>
        <translation>Nichts in dieser Einheit trainiert ein Ziehen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a pull; the open slot %1 could.</source>
        <translation>Nichts in dieser Einheit trainiert ein Ziehen; der offene Slot %1 könnte es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a push.</source>
        <translation>Nichts in dieser Einheit trainiert ein Drücken.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a push; the open slot %1 could.</source>
        <translation>Nichts in dieser Einheit trainiert ein Drücken; der offene Slot %1 könnte es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a squat or a lunge.</source>
        <translation>Nichts in dieser Einheit trainiert eine Kniebeuge oder einen Ausfallschritt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains a squat or a lunge; the open slot %1 could.</source>
        <translation>Nichts in dieser Einheit trainiert eine Kniebeuge oder einen Ausfallschritt; der offene Slot %1 könnte es.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains the trunk, by stability or rotation.</source>
        <translation>Nichts in dieser Einheit trainiert den Rumpf, durch Stabilität oder Rotation.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/families.hpp"/>
        <source>Nothing in this session trains the trunk, by stability or rotation; the open slot %1 could.</source>
        <translation>Nichts in dieser Einheit trainiert den Rumpf, durch Stabilität oder Rotation; der offene Slot %1 könnte es.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_panel.cpp"/>
        <source>Nothing is called that. Fewer letters find more.</source>
        <translation>So heißt nichts. Weniger Buchstaben finden mehr.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>Nothing is drafted here that the Shelf knows.</source>
        <translation>Hier ist nichts entworfen, was das Regal kennt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>Nothing is left to look at: the session is planned at %1 of %2 minutes, and what it does not keep, you have accepted.</source>
        <translation>Nichts mehr zu prüfen: die Einheit ist mit %1 von %2 Minuten geplant, und was sie nicht einhält, ist akzeptiert.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_page.cpp"/>
        <source>Nothing is ticked yet. Tick what stands in your gym and write how many, or tick the usual kit and mend it. It need not be complete.</source>
        <translation>Noch ist nichts angehakt. Anhaken, was im Studio steht, und schreiben, wie viele, oder das Übliche anhaken und ändern. Es muss nicht vollständig sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>Nothing that was tried ends the class 5 s earlier.</source>
        <translation>Nichts, was probiert wurde, beendet den Kurs 5 s früher.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>Nothing to look at: the session is planned at %1 of %2 minutes, and keeps every limit in every week.</source>
        <translation>Nichts zu prüfen: die Einheit ist mit %1 von %2 Minuten geplant und hält in jeder Woche jede Grenze ein.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_list.cpp"/>
        <source>Nothing to put out.</source>
        <translation>Nichts aufzubauen.</translation>
    </message>
    <message>
        <location filename="../../src/store/backing_up.cpp"/>
        <source>Nothing was restored, because no backup of “%1” as it is now could be made first (%2). It was left as it is. Free some space on that disk, or allow writing to “%3”; then restore again.</source>
        <translation>Nichts wurde wiederhergestellt, weil vorher keine Sicherung von „%1“, wie es jetzt ist, möglich war (%2). Es blieb, wie es war. Platz auf dem Datenträger schaffen oder das Schreiben nach „%3“ erlauben; dann noch einmal wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/gym_opening.cpp"/>
        <source>Nothing was taken from %1. Mend this in it first:%2</source>
        <translation>Aus %1 wurde nichts übernommen. Erst dies darin beheben:%2</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/gym_opening.cpp"/>
        <source>Nothing was taken from %1. Mend this in it first:%2
and %3 more; “bwright import” lists them all.</source>
        <translation>Aus %1 wurde nichts übernommen. Erst dies darin beheben:%2
und %3 weitere; „bwright import“ listet alle auf.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Nothing would change: the gym file holds the same.</source>
        <translation>Nichts würde sich ändern: die Studiodatei enthält dasselbe.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>Objects and lists stand in each other more than %1 deep.</source>
        <translation>Objekte und Listen sind mehr als %1 tief verschachtelt.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Of one session, as planned in that week</source>
        <translation>Von einer Einheit, wie in jener Woche geplant</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>On the Shelf, give %1 a harder option, or say why there is none</source>
        <translation>Im Regal für %1 eine schwerere Variante angeben oder sagen, warum es keine gibt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>On the Shelf, give %1 a harder option, such as %2, or say why there is none</source>
        <translation>Im Regal für %1 eine schwerere Variante angeben, etwa %2, oder sagen, warum es keine gibt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>On the Shelf, give %1 an easier option, or say why there is none</source>
        <translation>Im Regal für %1 eine leichtere Variante angeben oder sagen, warum es keine gibt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/options.cpp"/>
        <source>On the Shelf, give %1 an easier option, such as %2, or say why there is none</source>
        <translation>Im Regal für %1 eine leichtere Variante angeben, etwa %2, oder sagen, warum es keine gibt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/caution_missing.cpp"/>
        <source>On the Shelf, write a caution for %1</source>
        <translation>Im Regal einen Vorsichtshinweis für %1 schreiben</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/cue_missing.cpp"/>
        <source>On the Shelf, write down what a coach says of %1</source>
        <translation>Im Regal aufschreiben, was ein Coach zu %1 sagt</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>One card a page: with more, not every card would fit.</source>
        <translation>Eine Karte je Seite: mit mehr passt nicht jede Karte.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>One exercise less that trains %1</source>
        <translation>Eine Übung weniger, die %1 trainiert</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/novelty.cpp"/>
        <source>One exercise that members do not know yet</source>
        <translation>Eine Übung, die Mitglieder noch nicht kennen</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>One member fewer: saves %1</source>
        <translation>Ein Mitglied weniger: spart %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>One more %1: saves %2</source>
        <translation>Ein Stück mehr, %1: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <source>One more strength exercise that trains %1</source>
        <translation>Eine Kraftübung mehr, die %1 trainiert</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>One page.</source>
        <translation>Eine Seite.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>One round of %1 is %2 of work, longer than %3: the second exercise becomes a test of staying power.</source>
        <translation>Eine Runde von %1 ist %2 Arbeit, länger als %3: die zweite Übung wird zur Geduldsprobe.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>One round of %1 is %2 of work, shorter than %3: there is room for more.</source>
        <translation>Eine Runde von %1 ist %2 Arbeit, kürzer als %3: da ist Platz für mehr.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>One round of a strength pair is one to two minutes of work.</source>
        <translation>Eine Runde eines Kraftpaars ist eine bis zwei Minuten Arbeit.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>Open &amp;recent</source>
        <translation>Zuletzt ge&amp;öffnete</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Open a copy of the demonstration gym.</source>
        <translation>Eine Kopie des Demo-Studios öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Open a gym file</source>
        <translation>Studiodatei öffnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>Opening</source>
        <translation>Eröffnung</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Opposed</source>
        <translation>Gegensatzpaare</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>Or move it to the finisher, where longer sets belong</source>
        <translation>Oder in den Finisher verschieben, wo längere Sätze hingehören</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>Over %1 months: </source>
        <translation>Über %1 Monate: </translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets moved forwards or up and down, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, gingen %1 der Sätze vorwärts oder auf und ab, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets moved forwards or up and down, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, gingen %1 der Sätze vorwärts oder auf und ab, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets moved sideways, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, gingen %1 der Sätze seitwärts, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets moved sideways, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, gingen %1 der Sätze seitwärts, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets turned or resisted turning, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, drehten %1 der Sätze oder widerstanden einer Drehung, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets turned or resisted turning, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, drehten %1 der Sätze oder widerstanden einer Drehung, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets worked one side at a time, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, waren %1 der Sätze einseitig, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Over %3 months, this one among them, %1 of the sets worked one side at a time, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, waren %1 der Sätze einseitig, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>Over %3 months, this one among them, the upper body had %1 horizontal for every vertical set, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, hatte der Oberkörper %1 horizontale je vertikalem Satz, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>Over %3 months, this one among them, the upper body had %1 horizontal for every vertical set, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, hatte der Oberkörper %1 horizontale je vertikalem Satz, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>Over %3 months, this one among them, there was %1 of pushing for every set of pulling, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, kamen %1 Drucksätze auf jeden Zugsatz, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>Over %3 months, this one among them, there was %1 of pushing for every set of pulling, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, kamen %1 Drucksätze auf jeden Zugsatz, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>Over %3 months, this one among them, there was %1 of squats and lunges for every set of hinging, less than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, kamen %1 Kniebeugen und Ausfallschritte auf jeden Hüftbeugesatz, weniger als %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>Over %3 months, this one among them, there was %1 of squats and lunges for every set of hinging, more than %2.</source>
        <translation>Über %3 Monate, diesen mitgezählt, kamen %1 Kniebeugen und Ausfallschritte auf jeden Hüftbeugesatz, mehr als %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>P&amp;aper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>PD&amp;F…</source>
        <translation>PD&amp;F…</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_preview.cpp"/>
        <source>Page Up and Page Down turn pages, plus and minus bring the page nearer or farther, 0 fits it.</source>
        <translation>Bild auf und Bild ab blättern, Plus und Minus holen die Seite näher oder weiter weg, 0 passt sie ein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>Page after</source>
        <translation>Seite danach</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_view.cpp"/>
        <source>Page of the Handbook</source>
        <translation>Seite des Handbuchs</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>Parts of a name or a pattern; “main” for main lifts; “new”; “not since 2026-07” for what no month since then has used.</source>
        <translation>Teile eines Namens oder Musters; „haupt“ für Hauptübungen; „neu“; „nicht seit 2026-07“ für das, was seitdem kein Monat genutzt hat.</translation>
    </message>
    <message>
        <location filename="../../src/core/balance/balance_limits.cpp"/>
        <source>Pelland et al. 2025 (Sports Med, doi 10.1007/s40279-025-02344-w): counting one half for a set that trains a muscle indirectly fitted the studies best.</source>
        <translation>Pelland et al. 2025 (Sports Med, doi 10.1007/s40279-025-02344-w): ein halb für einen Satz, der einen Muskel indirekt trainiert, passte am besten zu den Studien.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Penalty %1 → %2</source>
        <translation>Strafpunkte %1 → %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Penalty %1, as it is.</source>
        <translation>Strafpunkte %1, wie es ist.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <location filename="../../src/desk/frame/places_column.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>Planned %1 of %2, %3</source>
        <translation>Geplant %1 von %2, %3</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>Play 1 to %1 runs.</source>
        <translation>1 bis %1 Durchläufe spielen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/words.cpp"/>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Power</source>
        <translation>Schnellkraft</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>Power is trained fresh: before strength, after a warm-up that tires nothing it needs.</source>
        <translation>Schnellkraft wird frisch trainiert: vor der Kraft, nach einem Aufwärmen, das nichts ermüdet, was sie braucht.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_dose.cpp"/>
        <source>Power sets are short enough to stay fast.</source>
        <translation>Schnellkraftsätze sind kurz genug, um schnell zu bleiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_preview.cpp"/>
        <source>Preview of the %1, page %2 of %3</source>
        <translation>Vorschau: %1, Seite %2 von %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_preview.cpp"/>
        <source>Preview. %1</source>
        <translation>Vorschau. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Previous f&amp;inding</source>
        <translation>Voriger H&amp;inweis</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>Print the milliseconds to the first paint, and quit.</source>
        <translation>Die Millisekunden bis zum ersten Bild ausgeben und beenden.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Printing</source>
        <translation>Druckt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/headline.cpp"/>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Proposal</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Proposals</source>
        <translation>Vorschläge</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/headline.cpp"/>
        <source>Propose</source>
        <translation>Vorschlagen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Propose for all open slots</source>
        <translation>Für alle offenen Slots vorschlagen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Propose for the open slots of this section</source>
        <translation>Für die offenen Slots dieses Abschnitts vorschlagen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Propose the whole month anew</source>
        <translation>Den ganzen Monat neu vorschlagen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>Pushing and pulling of the upper body keep a balance.</source>
        <translation>Drücken und Ziehen des Oberkörpers halten sich die Waage.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies.cpp"/>
        <source>Put %1 into the open slot %2</source>
        <translation>%1 in den offenen Slot %2 setzen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/notice.cpp"/>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>Put every limit back to what the rule book says? Undo brings yours back.</source>
        <translation>Jede Grenze auf den Wert des Regelbuchs zurücksetzen? Rückgängig holt die eigenen zurück.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_list.cpp"/>
        <source>Put out</source>
        <translation>Aufbauen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>Put something else between the two</source>
        <translation>Etwas anderes zwischen die beiden setzen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Put the weeks in order of effort</source>
        <translation>Die Wochen nach Anstrengung ordnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/notice.cpp"/>
        <source>Put this notice away</source>
        <translation>Diese Meldung ausblenden</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <location filename="../../src/sheets/wall/wall_columns.cpp"/>
        <source>RIR</source>
        <translation>RIR</translation>
    </message>
    <message>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>RIR: repetitions that you could still have done.</source>
        <translation>RIR: Wiederholungen, die noch möglich gewesen wären.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>RPE %1</source>
        <translation>RPE %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_paint.cpp"/>
        <source>RPE: 10 less the repetitions in reserve</source>
        <translation>RPE: 10 minus Wiederholungen in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>Reading results</source>
        <translation>Liest Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Remove %1 with its whole session? You can undo it until the gym is closed.</source>
        <translation>%1 mit der ganzen Einheit entfernen? Rückgängig ist möglich, bis das Studio geschlossen wird.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>Remove the line</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>Repetitions between which an exercise without load climbs to its harder option.</source>
        <translation>Wiederholungen, zwischen denen sich eine Übung ohne Last zu ihrer schwereren Variante steigert.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Repetitions in reserve in week %1</source>
        <translation>Wiederholungen in Reserve in Woche %1</translation>
    </message>
    <message>
        <location filename="../../src/core/model/effort.cpp"/>
        <source>Repetitions in reserve must be from 0 to 10.</source>
        <translation>Wiederholungen in Reserve liegen zwischen 0 und 10.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Rest after a heavy-then-long round.</source>
        <translation>Pause nach einer Runde Schwer-dann-lang.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_rest.cpp"/>
        <source>Rest after a power round. Below it a coach should look; above it is only noted.</source>
        <translation>Pause nach einer Schnellkraftrunde. Darunter ist zu prüfen; darüber ist es nur eine Notiz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Rest between rounds in every other format, or when none is chosen.</source>
        <translation>Pause zwischen den Runden in jedem anderen Format, oder wenn keines gewählt ist.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Rest between sets of one main lift at a time.</source>
        <translation>Pause zwischen Sätzen einer einzelnen Hauptübung.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Restore a backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Restore this one</source>
        <translation>Diese wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/strength_rest.cpp"/>
        <source>Rests between strength rounds suit the month&apos;s format.</source>
        <translation>Pausen zwischen Kraftrunden passen zum Format des Monats.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/class_view.cpp"/>
        <source>Results of the class</source>
        <translation>Ergebnisse des Kurses</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>Results older than this say nothing any more.</source>
        <translation>Ältere Ergebnisse sagen nichts mehr.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Round-trip</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_rest.cpp"/>
        <source>Rounds of power work are far enough apart to be done fresh.</source>
        <translation>Schnellkraftrunden liegen weit genug auseinander, um frisch ausgeführt zu werden.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <source>Rule…</source>
        <translation>Regel…</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Save &amp;a copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>Save a copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>Say in a few words why it may stay: nothing was kept.</source>
        <translation>Mit wenigen Worten sagen, warum es bleiben darf: nichts wurde gespeichert.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Sent to the printer.</source>
        <translation>An den Drucker gesendet.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies.cpp"/>
        <source>Set the dose of %1 to %2</source>
        <translation>Dosis von %1 auf %2 setzen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies.cpp"/>
        <source>Set the rest of group %1 to %2</source>
        <translation>Pause von Gruppe %1 auf %2 setzen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <location filename="../../src/core/rules/book/scales_remedies.cpp"/>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>Set the rounds of group %1 to %2 instead of %3</source>
        <translation>Runden von Gruppe %1 auf %2 setzen statt %3</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies_time.cpp"/>
        <source>Set the rounds of group %1 to %2 instead of %3: adds %4</source>
        <translation>Runden von Gruppe %1 auf %2 setzen statt %3: kostet %4</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies.cpp"/>
        <source>Set the tempo of %1 to %2</source>
        <translation>Tempo von %1 auf %2 setzen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/tally_list.cpp"/>
        <source>Sets by pattern</source>
        <translation>Sätze nach Muster</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/class_delegate.cpp"/>
        <source>Sets of %1, %2</source>
        <translation>Sätze von %1, %2</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>Sets of pushing for every set of pulling, in the month.</source>
        <translation>Drucksätze je Zugsatz, im Monat.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>Sets of squats and lunges for every set of hinging, in the month.</source>
        <translation>Kniebeugen- und Ausfallschrittsätze je Hüftbeugesatz, im Monat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>Settings and house limits</source>
        <translation>Einstellungen und Hausgrenzen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Settles %1</source>
        <translation>Erledigt %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Settles nothing, brings nothing.</source>
        <translation>Erledigt nichts, bringt nichts.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>Settles: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Sh&amp;ow on the wall</source>
        <translation>An der Wand z&amp;eigen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Share of the month&apos;s sets in each of the three planes.</source>
        <translation>Anteil der Sätze des Monats in jeder der drei Ebenen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Share of the month&apos;s sets that work one side at a time.</source>
        <translation>Anteil der Sätze des Monats, die einseitig sind.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>Short %1, long %2</source>
        <translation>Kurz %1, lang %2</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>Short all-out work in the finisher has the rest of the work:rest table.</source>
        <translation>Kurze Arbeit mit vollem Einsatz hat im Finisher die Pause der Arbeit-Pause-Tabelle.</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_actions.cpp"/>
        <source>Show on the wa&amp;ll</source>
        <translation>An der &amp;Wand zeigen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>Show only exercises that fit</source>
        <translation>Nur passende Übungen zeigen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Show only members whose name has these letters</source>
        <translation>Nur Mitglieder zeigen, deren Name diese Buchstaben hat</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Simulated class</source>
        <translation>Simulierter Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>Small kit</source>
        <translation>Kleingeräte</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>So many members and rounds are too much to simulate. Take fewer.</source>
        <translation>So viele Mitglieder und Runden sind zu viel zum Simulieren. Weniger nehmen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>So many sets can&apos;t be undone, and what was done before can&apos;t be undone after it.</source>
        <translation>So viele Sätze lassen sich nicht rückgängig machen, und was davor getan wurde, danach auch nicht mehr.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <source>Some of the work is done one side at a time, and not all of it.</source>
        <translation>Ein Teil der Arbeit ist einseitig, aber nicht alles.</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>Somebody must start somewhere: no count is above 0.</source>
        <translation>Irgendwo muss jemand beginnen: keine Zahl liegt über 0.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Something sideways less</source>
        <translation>Etwas Seitliches weniger</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Something sideways more</source>
        <translation>Etwas Seitliches mehr</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Something sideways or turning more</source>
        <translation>Etwas Seitliches oder Drehendes mehr</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Something turning less</source>
        <translation>Etwas Drehendes weniger</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>Something turning more</source>
        <translation>Etwas Drehendes mehr</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_clock.cpp"/>
        <source>Space starts</source>
        <translation>Leertaste startet</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_table.cpp"/>
        <source>Space ticks a line. Enter, or typing, opens a cell.</source>
        <translation>Die Leertaste hakt eine Zeile an. Die Eingabetaste oder Tippen öffnet eine Zelle.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Split group %1 into groups of %2</source>
        <translation>Gruppe %1 in Gruppen von %2 teilen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pattern_missing.cpp"/>
        <source>Squat or lunge, hinge, a push, a pull, and the trunk are each trained at least once.</source>
        <translation>Kniebeuge oder Ausfallschritt, Hüftbeuge, ein Drücken, ein Ziehen und der Rumpf werden jeweils mindestens einmal trainiert.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <source>Squats and lunges keep a balance with hinges.</source>
        <translation>Kniebeugen und Ausfallschritte halten den Hüftbeugen die Waage.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Stair</source>
        <translation>Treppe</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Stair. %1</source>
        <translation>Treppe. %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>Stands and stations</source>
        <translation>Gestelle und Stationen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>Stands on every sheet.</source>
        <translation>Steht auf jedem Blatt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Start %1</source>
        <translation>%1 beginnen</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start everybody at group %1: %2 less waiting for each</source>
        <translation>Alle bei Gruppe %1 starten: %2 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start everybody at group %1: saves %2</source>
        <translation>Alle bei Gruppe %1 starten: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Start it &amp;empty</source>
        <translation>&amp;Leer beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Start it as a &amp;copy of the last</source>
        <translation>Als &amp;Kopie des letzten beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Start it as a copy of the month on &amp;show</source>
        <translation>Als Kopie des &amp;gezeigten Monats beginnen</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start spread over groups %1: %2 less waiting for each</source>
        <translation>Über die Gruppen %1 verteilt starten: %2 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start spread over groups %1: saves %2</source>
        <translation>Über die Gruppen %1 verteilt starten: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Start the &amp;next month…</source>
        <translation>&amp;Nächsten Monat beginnen…</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Start the first month</source>
        <translation>Den ersten Monat beginnen</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start with %1 at groups %2: %3 less waiting for each</source>
        <translation>Mit %1 bei den Gruppen %2 starten: %3 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/start_ideas.cpp"/>
        <source>Start with %1 at groups %2: saves %3</source>
        <translation>Mit %1 bei den Gruppen %2 starten: spart %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>Start with %1, the best of those tried: saves %2</source>
        <translation>Mit %1 starten, dem besten der Versuche: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>Start with %1: saves %2</source>
        <translation>Mit %1 starten: spart %2</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>Still open on the day of printing: %1 stop, %2 look.</source>
        <translation>Am Tag des Drucks noch offen: %1 Stopp, %2 Prüfen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <location filename="../../src/desk/frame/work_line.cpp"/>
        <location filename="../../src/desk/propose/propose_line.cpp"/>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_line.cpp"/>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>Stop looking and keep the best so far</source>
        <translation>Suche beenden und das bisher Beste behalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_line.cpp"/>
        <source>Stop simulating the class</source>
        <translation>Simulation des Kurses anhalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/work_line.cpp"/>
        <source>Stop the work that is running</source>
        <translation>Die laufende Arbeit anhalten</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <location filename="../../src/core/floor/study.cpp"/>
        <source>Stopped as asked; there is no answer.</source>
        <translation>Wie gewünscht angehalten; es gibt keine Antwort.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Stopped. Nothing was written; a table that was there before is still there.</source>
        <translation>Angehalten. Nichts wurde geschrieben; eine Tabelle, die vorher da war, ist noch da.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Stopped. The printer may still bring the pages it has already taken.</source>
        <translation>Angehalten. Der Drucker kann die Seiten, die er schon hat, noch ausgeben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Stopped. The sheets written so far are kept in %1.</source>
        <translation>Angehalten. Die bisher geschriebenen Blätter liegen in %1.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Straight-heavy</source>
        <translation>Einzeln-schwer</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/words.cpp"/>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/pairing.cpp"/>
        <source>Strength groups are what the month&apos;s format says.</source>
        <translation>Kraftgruppen sind, was das Format des Monats sagt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/heavy_first.cpp"/>
        <source>Swap the two exercises of group %1</source>
        <translation>Die beiden Übungen von Gruppe %1 tauschen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>Swap this slot, or fill it</source>
        <translation>Diesen Slot tauschen oder füllen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Take care: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Take the low rounds in week 1</source>
        <translation>In Woche 1 die niedrigen Runden nehmen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Take the usual stair: learn with low rounds and 4 in reserve, then down to 1</source>
        <translation>Die übliche Treppe nehmen: lernen mit niedrigen Runden und 4 in Reserve, dann hinab bis 1</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Take this flag away</source>
        <translation>Diesen Vermerk entfernen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>Tempo: seconds to lower, pause, lift, pause; X is as fast as possible.</source>
        <translation>Tempo: Sekunden senken, halten, heben, halten; X ist so schnell wie möglich.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>The %1 section is planned at %2, %3 over its budget of %4.</source>
        <translation>Der Abschnitt %1 ist mit %2 geplant, %3 über seinem Budget von %4.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>The %1 section is planned at %2, %3 under its budget of %4.</source>
        <translation>Der Abschnitt %1 ist mit %2 geplant, %3 unter seinem Budget von %4.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/section_length.cpp"/>
        <source>The %1 section is planned at %2, %3 under its budget of %4; its open slots take no time yet.</source>
        <translation>Der Abschnitt %1 ist mit %2 geplant, %3 unter seinem Budget von %4; seine offenen Slots brauchen noch keine Zeit.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>The Shelf has no exercise to offer.</source>
        <translation>Das Regal hat keine Übung anzubieten.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>The Shelf is empty. Ctrl+Shift+N adds an exercise; Gym → Bring in a bundle brings many.</source>
        <translation>Das Regal ist leer. Strg+Umschalt+N fügt eine Übung hinzu; Studio → Bündel einlesen bringt viele.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>The Shelf of exercises comes with it; kit, months and members are yours to add.</source>
        <translation>Das Regal mit Übungen ist dabei; Geräte, Monate und Mitglieder kommen selbst dazu.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>The answer before</source>
        <translation>Der Vorschlag davor</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>The backup of %1 takes the place of the gym file.</source>
        <translation>Die Sicherung vom %1 tritt an die Stelle der Studiodatei.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>The band that leaves the week’s repetitions in reserve.</source>
        <translation>Das Band, das die Wiederholungen in Reserve dieser Woche lässt.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>The bundle is empty (line 1, column 1).</source>
        <translation>Das Bündel ist leer (Zeile 1, Spalte 1).</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>The class</source>
        <translation>Der Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>The class can&apos;t be played.</source>
        <translation>Der Kurs ist nicht spielbar.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>The class ends at %1 of %2</source>
        <translation>Der Kurs endet bei %1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>The class in words</source>
        <translation>Der Kurs in Worten</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>The class of today</source>
        <translation>Der Kurs von heute</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>The day after</source>
        <translation>Der Tag danach</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>The day before</source>
        <translation>Der Tag davor</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>The disk could not read or write “%1” (%2). Nothing was stored: the file holds what it held before. Check that the disk is connected, then do it again; if this comes back, save a copy on another disk.</source>
        <translation>Der Datenträger konnte „%1“ nicht lesen oder schreiben (%2). Nichts wurde gespeichert: der bisherige Inhalt ist noch da. Prüfen, ob der Datenträger verbunden ist, und es noch einmal versuchen; kommt das wieder, eine Kopie auf einem anderen Datenträger speichern.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>The disk is full, so nothing was stored: “%1” holds what it held before. Free some space on that disk, then do it again.</source>
        <translation>Der Datenträger ist voll, deshalb wurde nichts gespeichert: „%1“ hat noch den bisherigen Inhalt. Platz darauf schaffen und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>The dose as it stands, without load.</source>
        <translation>Die Dosis, wie sie ist, ohne Last.</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>The exercise to copy is not on the Shelf any more.</source>
        <translation>Die zu kopierende Übung ist nicht mehr im Regal.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>The fewer rounds of each group.</source>
        <translation>Die wenigeren Runden jeder Gruppe.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>The file begins with a byte order mark, which a bundle does not need; it was left out.</source>
        <translation>Die Datei beginnt mit einer Bytereihenfolge-Marke, die ein Bündel nicht braucht; sie wurde weggelassen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>The first line must name the columns; missing: %1.</source>
        <translation>Die erste Zeile muss die Spalten nennen; es fehlt: %1.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>The first number must not be above the second: “%1”.</source>
        <translation>Die erste Zahl darf nicht über der zweiten liegen: „%1“.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>The first rows of the table</source>
        <translation>Die ersten Zeilen der Tabelle</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>The format is %1 for %2 months in a row now.</source>
        <translation>Das Format ist jetzt %2 Monate in Folge %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_pages.cpp"/>
        <source>The guide</source>
        <translation>Der Leitfaden</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <location filename="../../src/desk/gym/gym_table.cpp"/>
        <source>The gym</source>
        <translation>Das Studio</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>The gym file can&apos;t be read now: %1</source>
        <translation>Die Studiodatei ist jetzt nicht lesbar: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>The gym file holds what the backup of %1 holds.</source>
        <translation>Die Studiodatei enthält, was die Sicherung vom %1 enthält.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>The gym file to open.</source>
        <translation>Die zu öffnende Studiodatei.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>The gym has %1 places</source>
        <translation>Das Studio hat %1 Plätze</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/kit_short.cpp"/>
        <source>The gym has the kit of every exercise for at least one member at a time.</source>
        <translation>Das Studio hat für jede Übung die Geräte für mindestens ein Mitglied auf einmal.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>The gym has the kit of none of the %2 that would fit.</source>
        <translation>Für keine der %2 passenden hat das Studio die Geräte.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>The heaviest load here; the estimate asks for %1.</source>
        <translation>Die schwerste Last hier; die Schätzung verlangt %1.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>The key “%1” stands in this object twice.</source>
        <translation>Der Schlüssel „%1“ steht zweimal in diesem Objekt.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>The last day is far from the days before it and counts little until another one bears it out: check what was written down.</source>
        <translation>Der letzte Tag liegt weit von den Tagen davor und zählt wenig, bis ein weiterer ihn bestätigt: prüfen, was eingetragen wurde.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>The last round is reached in %1, elsewhere by all</source>
        <translation>Die letzte Runde wird erreicht in %1, sonst von allen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <source>The last section</source>
        <translation>Der letzte Abschnitt</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/estimate.cpp"/>
        <source>The last sets were longer than %1’s equation is meant for (%2 repetitions, those in reserve among them), so they count less.</source>
        <translation>Die letzten Sätze waren länger, als die Formel von %1 gedacht ist (%2 Wiederholungen, die in Reserve mitgezählt), deshalb zählen sie weniger.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>The lightest load here; the estimate asks for %1.</source>
        <translation>Die leichteste Last hier; die Schätzung verlangt %1.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_gym.cpp"/>
        <source>The mass of %1 kg is here twice.</source>
        <translation>Die Masse von %1 kg steht zweimal da.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/asked.cpp"/>
        <source>The month has no such place.</source>
        <translation>Der Monat hat keine solche Stelle.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>The month moves in all three planes.</source>
        <translation>Der Monat bewegt sich in allen drei Ebenen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/launch.cpp"/>
        <source>The month to show.</source>
        <translation>Der zu zeigende Monat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_view.cpp"/>
        <source>The month&apos;s sheet</source>
        <translation>Das Blatt des Monats</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>The most that a load rises from one week to the next.</source>
        <translation>Wie viel eine Last von einer Woche zur nächsten höchstens steigt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>The most that a warm-up exercise may ask of grip, lumbar or overhead, from 0 to 3.</source>
        <translation>Wie viel eine Aufwärmübung höchstens von grip, lumbar oder overhead fordern darf, von 0 bis 3.</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>The next answer</source>
        <translation>Der nächste Vorschlag</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/load_target.cpp"/>
        <source>The next load here, %1, is %2 % above %3: stay, and do a repetition more.</source>
        <translation>Die nächste Last hier, %1, liegt %2 % über %3: bleiben und eine Wiederholung mehr machen.</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>The note of a flag may have 2000 characters; this one has %1.</source>
        <translation>Die Notiz zu einem Vermerk darf 2000 Zeichen haben; diese hat %1.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>The number “%3” in line %1, column %2 is too large for any use.</source>
        <translation>Die Zahl „%3“ in Zeile %1, Spalte %2 ist für jeden Zweck zu groß.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>The parts of “%1” do not add up to 100 %.</source>
        <translation>Die Teile von „%1“ ergeben nicht 100 %.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/power_first.cpp"/>
        <source>The power section stands after strength work, so it is done tired.</source>
        <translation>Der Schnellkraftabschnitt steht nach Kraftarbeit und wird deshalb müde ausgeführt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_printing.cpp"/>
        <source>The printer did not take the sheet, so nothing was printed. See that it is switched on and has paper, or save a PDF instead.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen, deshalb wurde nichts gedruckt. Prüfen, ob er eingeschaltet ist und Papier hat, oder stattdessen ein PDF ablegen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>The rule book: %1. %2</source>
        <translation>Das Regelbuch: %1. %2</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/one_sided.cpp"/>
        <location filename="../../src/core/rules/book/planes.cpp"/>
        <source>The same over the months of the window.</source>
        <translation>Dasselbe über die Monate des Zeitfensters.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <location filename="../../src/core/rules/book/knee_hip.cpp"/>
        <location filename="../../src/core/rules/book/push_pull.cpp"/>
        <source>The same over the months of the window; it is only noted.</source>
        <translation>Dasselbe über die Monate des Zeitfensters; es ist nur eine Notiz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/session_length.cpp"/>
        <source>The session as planned, without any queue, fits into the class.</source>
        <translation>Die Einheit, wie geplant und ohne jedes Warten, passt in den Kurs.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/session_length.cpp"/>
        <source>The session is planned at %1 and the class has %2: it runs %3 over.</source>
        <translation>Die Einheit ist mit %1 geplant, und der Kurs hat %2: sie überzieht um %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/session_length.cpp"/>
        <source>The session is planned at %1 of the %2 in the class: %3 is left for late starts, questions and waiting.</source>
        <translation>Die Einheit ist mit %1 der %2 des Kurses geplant: %3 bleiben für spätes Kommen, Fragen und Warten.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overrun_chance.cpp"/>
        <source>The simulated class, with its queues, ends in time.</source>
        <translation>Der simulierte Kurs endet mitsamt seinem Warten rechtzeitig.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>The stair begins easy, never gets easier, and ends with its hardest week.</source>
        <translation>Die Treppe beginnt leicht, wird nie leichter und endet mit ihrer härtesten Woche.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>The table has more than 64 MiB: bring it in in parts.</source>
        <translation>Die Tabelle hat mehr als 64 MiB: in Teilen einlesen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>The table is empty.</source>
        <translation>Die Tabelle ist leer.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>The talk is one length of time, such as 1:00 or 45 s.</source>
        <translation>Die Ansprache ist eine einzige Zeit, etwa 1:00 oder 45 s.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>The text ends in line %1, column %2, before it is complete: part of it may be lost.</source>
        <translation>Der Text endet in Zeile %1, Spalte %2, bevor er vollständig ist: ein Teil kann verloren sein.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>The upper body pushes and pulls both away from the chest and overhead.</source>
        <translation>Der Oberkörper drückt und zieht sowohl nach vorn als auch über Kopf.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>The upper body works horizontally only: nothing is pressed up or pulled down.</source>
        <translation>Der Oberkörper arbeitet nur horizontal: nichts wird nach oben gedrückt oder nach unten gezogen.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/horizontal_vertical.cpp"/>
        <source>The upper body works overhead only: no press away from the chest, no row.</source>
        <translation>Der Oberkörper arbeitet nur über Kopf: kein Drücken nach vorn, kein Rudern.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>The version of a bundle must be %1.</source>
        <translation>Die Version eines Bündels muss %1 sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>The week’s rounds: low, open, high</source>
        <translation>Die Runden der Woche: niedrig, offen, hoch</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_jump.cpp"/>
        <source>The weight that the stair asks for rises in small steps.</source>
        <translation>Das Gewicht, das die Treppe verlangt, steigt in kleinen Schritten.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>There are %1 by the name of “%2”: write the id.</source>
        <translation>Es gibt %1 mit dem Namen „%2“: die Kennung schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_block.cpp"/>
        <source>There are %1 head counts for %2 groups: give one a group.</source>
        <translation>Es sind %1 Kopfzahlen für %2 Gruppen: je Gruppe eine angeben.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.hpp"/>
        <source>There are %1 of these, more than the %2 that are allowed.</source>
        <translation>Davon sind %1 da, mehr als die %2 erlaubten.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>There are no months before.</source>
        <translation>Es gibt keine Monate davor.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/propose.cpp"/>
        <source>There are not enough different exercises for these slots: each may stand only once in a session. Fill some of them by hand, or add exercises to the Shelf.</source>
        <translation>Es gibt nicht genug verschiedene Übungen für diese Slots: jede darf in einer Einheit nur einmal stehen. Einige von Hand füllen oder dem Regal Übungen hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>There is a zero byte in line %1, column %2. The file is damaged, or not saved as UTF-8.</source>
        <translation>In Zeile %1, Spalte %2 steht ein Nullbyte. Die Datei ist beschädigt oder nicht als UTF-8 gespeichert.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/references.cpp"/>
        <source>There is no %1 “%2” in this bundle or in the gym beneath it.</source>
        <translation>In diesem Bündel oder im Studio darunter gibt es kein %1 „%2“.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>There is no backup of this file. If you saved a copy elsewhere, close this and open the copy: Gym, Open a gym file.</source>
        <translation>Von dieser Datei gibt es keine Sicherung. Liegt anderswo eine Kopie, dies schließen und die Kopie öffnen: Studio, Studiodatei öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <source>There is no backup yet. The first of a day is made soon after the gym file is opened. Back up now makes one at once.</source>
        <translation>Es gibt noch keine Sicherung. Die erste eines Tages entsteht bald nach dem Öffnen der Studiodatei. Jetzt sichern legt sofort eine an.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>There is no exercise “%1” on the Shelf.</source>
        <translation>Im Regal ist keine Übung „%1“.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/class_model.cpp"/>
        <source>There is no last time to repeat.</source>
        <translation>Es gibt kein letztes Mal zum Wiederholen.</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>There is no member “%1”.</source>
        <translation>Es gibt kein Mitglied „%1“.</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>There is no month yet. Start one on the Bench, and its sheets will lie here.</source>
        <translation>Es gibt noch keinen Monat. Auf der Werkbank einen beginnen, dann liegen hier seine Blätter.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>There is no month yet. Start one, and what the rule book finds in it will stand here.</source>
        <translation>Es gibt noch keinen Monat. Einen beginnen, dann steht hier, was das Regelbuch darin findet.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>There is no month yet. With one, what a limit changes in it will stand here.</source>
        <translation>Es gibt noch keinen Monat. Mit einem steht hier, was eine Grenze darin ändert.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>There is no month yet: start one to see its hour.</source>
        <translation>Es gibt noch keinen Monat: einen beginnen, um seine Stunde zu sehen.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/task.cpp"/>
        <source>There is no open slot to fill.</source>
        <translation>Es gibt keinen offenen Slot zu füllen.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/calendar.cpp"/>
        <source>There is no week %1: weeks run from 1 to %2.</source>
        <translation>Es gibt keine Woche %1: Wochen gehen von 1 bis %2.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>There is not enough memory for “%1”. Nothing was stored: it holds what it held before. Close other programs, then do it again.</source>
        <translation>Für „%1“ ist nicht genug Speicher da. Nichts wurde gespeichert: der bisherige Inhalt ist noch da. Andere Programme schließen und es noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>There is nothing to bring in.</source>
        <translation>Es gibt nichts einzulesen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>There is nothing to type here.</source>
        <translation>Hier ist nichts zu tippen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/stock_text.cpp"/>
        <source>These are more than 1000 in all.</source>
        <translation>Das sind zusammen mehr als 1000.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>They can&apos;t be compared line by line: one is of an earlier format, or holds what this Blockwright can&apos;t read.</source>
        <translation>Sie lassen sich nicht Zeile für Zeile vergleichen: eine hat ein früheres Format oder enthält, was dieses Blockwright nicht lesen kann.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>This bundle is larger than the %1 MiB that can be read. Export fewer results at a time.</source>
        <translation>Dieses Bündel ist größer als die %1 MiB, die sich lesen lassen. Weniger Ergebnisse auf einmal ausgeben.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>This bundle was written by a newer version of the program, which is needed to read it. This one reads version %1.</source>
        <translation>Dieses Bündel wurde von einer neueren Version des Programms geschrieben, die zum Lesen nötig ist. Diese hier liest Version %1.</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/asked.cpp"/>
        <source>This gym has no member %1.</source>
        <translation>Dieses Studio hat kein Mitglied %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>This gym has no members yet. They come in with a bundle: Gym, then Bring in.</source>
        <translation>Dieses Studio hat noch keine Mitglieder. Sie kommen mit einem Bündel: Studio, dann Bündel einlesen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>This gym has no month %1.</source>
        <translation>Dieses Studio hat keinen Monat %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>This gym has no month yet.</source>
        <translation>Dieses Studio hat noch keinen Monat.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>This gym has no results yet.</source>
        <translation>Dieses Studio hat noch keine Ergebnisse.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>This gym is open for reading only.</source>
        <translation>Dieses Studio ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_groups.cpp"/>
        <source>This gym&apos;s own</source>
        <translation>Das Eigene dieses Studios</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/wording.cpp"/>
        <source>This gym&apos;s setting.</source>
        <translation>Einstellung dieses Studios.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/member_flag.cpp"/>
        <source>This gym&apos;s setting: the flags of its members. The program only looks for another exercise; a licensed professional decides.</source>
        <translation>Einstellung dieses Studios: die Vermerke seiner Mitglieder. Das Programm sucht nur eine andere Übung; entscheiden muss eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_delegate.cpp"/>
        <source>This house: %1</source>
        <translation>Dieses Haus: %1</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>This is empty.</source>
        <translation>Das ist leer.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/json_parse.cpp"/>
        <source>This is not JSON from line %1, column %2 on, near “%3”: a comma, a bracket or a quotation mark is missing or too many.</source>
        <translation>Das ist ab Zeile %1, Spalte %2 kein JSON, nahe „%3“: ein Komma, eine Klammer oder ein Anführungszeichen fehlt oder ist zu viel.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_csv.cpp"/>
        <source>This is not UTF-8 text: save the table as CSV in UTF-8.</source>
        <translation>Das ist kein UTF-8-Text: die Tabelle als CSV in UTF-8 speichern.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_bundle.cpp"/>
        <source>This is not a bundle: its format must be “%1”.</source>
        <translation>Das ist kein Bündel: sein Format muss „%1“ sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>This is one step, which can be undone.</source>
        <translation>Das ist ein Schritt, der sich rückgängig machen lässt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_page.cpp"/>
        <source>This month has no exercises yet. Draft them on the Bench, Alt+1.</source>
        <translation>Dieser Monat hat noch keine Übungen. Auf der Werkbank entwerfen, Alt+1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/board/board_view.cpp"/>
        <source>This month has nothing to show yet. Esc leaves.</source>
        <translation>Dieser Monat hat noch nichts zu zeigen. Esc verlässt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>This month: </source>
        <translation>Dieser Monat: </translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This must be %1.</source>
        <translation>Das muss %1 sein.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This must be a number above %1 and at most %2.</source>
        <translation>Das muss eine Zahl über %1 und höchstens %2 sein.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This must be a number from %1 to %2.</source>
        <translation>Das muss eine Zahl von %1 bis %2 sein.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This must be a whole number from %1 to %2.</source>
        <translation>Das muss eine ganze Zahl von %1 bis %2 sein.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.hpp"/>
        <source>This must be one number, or two as [lowest, highest].</source>
        <translation>Das muss eine Zahl sein, oder zwei als [kleinste, größte].</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This must be true or false.</source>
        <translation>Das muss true oder false sein.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_block.cpp"/>
        <source>This must be “together”, “spread” or a list with one head count a group.</source>
        <translation>Das muss „together“, „spread“ oder eine Liste mit einer Kopfzahl je Gruppe sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>This section has %1 groups: give as many head counts, such as 6 + 6.</source>
        <translation>Dieser Abschnitt hat %1 Gruppen: so viele Kopfzahlen angeben, etwa 6 + 6.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This text has %1 characters, more than the %2 that are allowed.</source>
        <translation>Dieser Text hat %1 Zeichen, mehr als die %2 erlaubten.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This text holds a control character that can&apos;t be printed.</source>
        <translation>Dieser Text enthält ein Steuerzeichen, das sich nicht drucken lässt.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>This text must not be empty.</source>
        <translation>Dieser Text darf nicht leer sein.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>Title of the month</source>
        <translation>Titel des Monats</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_pages.cpp"/>
        <source>To begin with</source>
        <translation>Zum Anfang</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>To&amp;day</source>
        <translation>He&amp;ute</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <source>Try</source>
        <translation>Probieren</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <location filename="../../src/desk/bench/findings_list.cpp"/>
        <location filename="../../src/desk/bench/findings_model.cpp"/>
        <source>Try: %1</source>
        <translation>Probieren: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>Two cards a page: with four, not every card would fit.</source>
        <translation>Zwei Karten je Seite: mit vier passt nicht jede Karte.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>Two columns mean “%1”: the first counts. </source>
        <translation>Zwei Spalten bedeuten „%1“: die erste zählt. </translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overlap.cpp"/>
        <source>Two exercises in a row do not both tire grip, lumbar, overhead or impact.</source>
        <translation>Zwei Übungen in Folge ermüden nicht beide Griff, unteren Rücken, Überkopf oder Aufprall.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>Type what is left in reserve</source>
        <translation>Tippen, was in Reserve bleibt</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>Unlock it and choose another lift</source>
        <translation>Entsperren und eine andere Übung wählen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/finisher_dose.cpp"/>
        <source>Up to which length work can be all-out.</source>
        <translation>Bis zu welcher Dauer Arbeit voller Einsatz sein kann.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/remedies.cpp"/>
        <source>Use %1 instead of %2</source>
        <translation>%1 statt %2 nehmen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Use %1 instead of %2: %3 less waiting for each</source>
        <translation>%1 statt %2 nehmen: %3 weniger Warten für jeden</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/floor_search.cpp"/>
        <source>Use %1 instead of %2: saves %3</source>
        <translation>%1 statt %2 nehmen: spart %3</translation>
    </message>
    <message>
        <location filename="../../src/core/floor/floor.cpp"/>
        <source>Use 1 to %1 threads.</source>
        <translation>1 bis %1 Threads nehmen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/menus.cpp"/>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>Visits a week</source>
        <translation>Besuche je Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>Waiting for &amp;kit</source>
        <translation>Warten auf G&amp;eräte</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/wait_table.cpp"/>
        <source>Waiting for kit</source>
        <translation>Warten auf Geräte</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/words.cpp"/>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>Was a %1, is %2</source>
        <translation>War %1, ist %2</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/why.cpp"/>
        <source>Was a %1, is a %2: %3</source>
        <translation>War %1, ist %2: %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <location filename="../../src/desk/stair/stair_paint.cpp"/>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>Week %1</source>
        <translation>Woche %1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Week %1 asks for no more effort than week 1: %2 in reserve then, %3 at the start.</source>
        <translation>Woche %1 verlangt nicht mehr Anstrengung als Woche 1: dann %2 in Reserve, am Anfang %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Week %1 is easier than week %2: it leaves %3 in reserve after %4.</source>
        <translation>Woche %1 ist leichter als Woche %2: sie lässt %3 in Reserve nach %4.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>Week %1 of %2: %3, %4, %5, %6.</source>
        <translation>Woche %1 von %2: %3, %4, %5, %6.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>Week %1, %2 %3: %4.</source>
        <translation>Woche %1, %2 %3: %4.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/week_row.cpp"/>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>Week %1: %2</source>
        <translation>Woche %1: %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>Week &amp;%1</source>
        <translation>Woche &amp;%1</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>Week 1 asks for more rounds than week %1: the first week is not the one to learn in.</source>
        <translation>Woche 1 verlangt mehr Runden als Woche %1: die erste Woche ist nicht die zum Lernen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/week_row.cpp"/>
        <source>Week of the month</source>
        <translation>Woche des Monats</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>Weeks %1–%2</source>
        <translation>Wochen %1–%2</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/key_sheet.cpp"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/house_limits.cpp"/>
        <source>What a finding of level %1 adds to the penalty.</source>
        <translation>Was ein Hinweis der Stufe %1 an Strafpunkten bringt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>What a set counts</source>
        <translation>Was ein Satz zählt</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/cell_trouble.cpp"/>
        <source>What can&apos;t be taken</source>
        <translation>Was nicht übernommen werden kann</translation>
    </message>
    <message>
        <location filename="../../src/core/balance/balance_limits.cpp"/>
        <source>What each set counts for a muscle that only helps; 0: as the Shelf tells it.</source>
        <translation>Was jeder Satz für einen nur helfenden Muskel zählt; 0: wie das Regal es sagt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_page.cpp"/>
        <source>What each slot asks, week by week</source>
        <translation>Was jeder Slot verlangt, Woche für Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>What ends it earlier</source>
        <translation>Was ihn früher enden lässt</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backups_dialog.cpp"/>
        <location filename="../../src/desk/frame/notice.cpp"/>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>What is in place now is kept first, in the same folder.</source>
        <translation>Was jetzt da ist, wird zuerst gesichert, im selben Ordner.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>What is wrong, line by line</source>
        <translation>Was falsch ist, Zeile für Zeile</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_sheet.cpp"/>
        <source>What stands where before each section, for a full class; loads are those on the members’ cards.</source>
        <translation>Was vor jedem Abschnitt wo steht, für einen vollen Kurs; Lasten sind die auf den Karten der Mitglieder.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>What stays</source>
        <translation>Was bleibt</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>What the backup holds</source>
        <translation>Was die Sicherung enthält</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>What the balance is counted over.</source>
        <translation>Worüber die Waage zählt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>What the flag is about</source>
        <translation>Worum es im Vermerk geht</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>What the limit does to this month</source>
        <translation>Was die Grenze in diesem Monat bewirkt</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>What the slot asks of the member</source>
        <translation>Was der Slot vom Mitglied verlangt</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_view.cpp"/>
        <source>What the week is for: learn, build, challenge</source>
        <translation>Wozu die Woche da ist: lernen, aufbauen, fordern</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/talk_sheet.cpp"/>
        <source>What this month is for</source>
        <translation>Wozu dieser Monat da ist</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>What was in place before is kept as %1.</source>
        <translation>Was vorher da war, ist als %1 aufbewahrt.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>What was measured:</source>
        <translation>Was gemessen wurde:</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>When a smaller share of the members get to the highest round, it is noted.</source>
        <translation>Wenn ein kleinerer Anteil der Mitglieder bis zur höchsten Runde kommt, ist es eine Notiz.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/overrun_chance.cpp"/>
        <source>When more of them run over, the draft is stopped.</source>
        <translation>Wenn mehr davon überziehen, wird der Entwurf gestoppt.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/third_round.cpp"/>
        <source>When no larger share gets there, which is as good as nobody, a coach should look.</source>
        <translation>Wenn kein größerer Anteil so weit kommt, also so gut wie niemand, ist zu prüfen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/finish_chart.cpp"/>
        <location filename="../../src/desk/floor/floor_page.cpp"/>
        <source>When the class ends</source>
        <translation>Wann der Kurs endet</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/main_window.cpp"/>
        <source>Where should the new gym file be?</source>
        <translation>Wo soll die neue Studiodatei liegen?</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/start_page.cpp"/>
        <source>Which gym is it?</source>
        <translation>Welches Studio ist es?</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>Who comes no more is not offered in the grid; the results stay.</source>
        <translation>Wer nicht mehr kommt, wird im Raster nicht angeboten; die Ergebnisse bleiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>Whole minutes, door to door.</source>
        <translation>Ganze Minuten, von Tür zu Tür.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <source>Whom and what to show</source>
        <translation>Wen und was zeigen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/reason_line.cpp"/>
        <source>Why may this stay (%1)?</source>
        <translation>Warum darf das bleiben (%1)?</translation>
    </message>
    <message>
        <location filename="../../src/core/ramp/session_load.cpp"/>
        <source>With %1 like sessions a week monotony is always %2, so it says next to nothing here.</source>
        <translation>Bei %1 gleichen Einheiten je Woche ist die Monotonie immer %2, sie sagt hier also fast nichts.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>With %1, in %2</source>
        <translation>Mit %1, im %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>With the rule book&apos;s %1, in %2</source>
        <translation>Mit %1 aus dem Regelbuch, im %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/handbook/handbook_window.cpp"/>
        <source>Words to find in the Handbook</source>
        <translation>Wörter, die im Handbuch gesucht werden</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/superset_work.cpp"/>
        <source>Work in one round of a strength pair, set-ups and rests left out; 90 s is typical.</source>
        <translation>Arbeit in einer Runde eines Kraftpaars, ohne Umbau und Pausen; typisch sind 90 s.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Would be found (%1)</source>
        <translation>Würde gefunden (%1)</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Would change</source>
        <translation>Würde anders</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>Would change – %1.</source>
        <translation>Würde anders – %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Would come back</source>
        <translation>Käme zurück</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>Would come back – %1.</source>
        <translation>Käme zurück – %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>Would go</source>
        <translation>Fiele weg</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Would go (%1)</source>
        <translation>Fiele weg (%1)</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>Would go – %1.</source>
        <translation>Fiele weg – %1.</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limit_effect.cpp"/>
        <source>Would turn (%1)</source>
        <translation>Würde anders (%1)</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Write all of %1</source>
        <translation>Alles von %1 schreiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Write all results as a table</source>
        <translation>Alle Ergebnisse als Tabelle schreiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>Write as a bundle</source>
        <translation>Als Bündel schreiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>Write how many start at each group: 6 + 6.</source>
        <translation>Angeben, wie viele an jeder Gruppe beginnen: 6 + 6.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>Write how much each has, in per cent: %1 60, %2 40.</source>
        <translation>Angeben, wie viel jedes hat, in Prozent: %1 60, %2 40.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>Writing results</source>
        <translation>Schreibt Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheets_page.cpp"/>
        <source>Writing sheets</source>
        <translation>Schreibt Blätter</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>a heavy set, straight into a lighter, longer one</source>
        <translation>ein schwerer Satz, direkt in einen leichteren, längeren</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>a heavy set, then a fast one of the same movement</source>
        <translation>ein schwerer Satz, dann ein schneller derselben Bewegung</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.hpp"/>
        <source>a list [ ]</source>
        <translation>eine Liste [ ]</translation>
    </message>
    <message>
        <location filename="../../src/store/rows/reading.hpp"/>
        <source>a list belongs to nothing</source>
        <translation>eine Liste gehört zu nichts</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>a note, if it helps</source>
        <translation>eine Notiz, falls sie hilft</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.hpp"/>
        <source>a word in quotation marks</source>
        <translation>ein Wort in Anführungszeichen</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>accept a finding</source>
        <translation>einen Hinweis akzeptieren</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_delegate.cpp"/>
        <source>accepted before</source>
        <translation>früher akzeptiert</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>add a caution</source>
        <translation>Vorsichtshinweis hinzufügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>add a cue</source>
        <translation>Cue hinzufügen</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_moves.cpp"/>
        <source>add a group</source>
        <translation>eine Gruppe einfügen</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_moves.cpp"/>
        <source>add a section</source>
        <translation>einen Abschnitt einfügen</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_moves.cpp"/>
        <source>add a slot</source>
        <translation>einen Slot einfügen</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>aim at %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>all %1 sets from %2 to %3</source>
        <translation>alle %1 Sätze von %2 bis %3</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>all here</source>
        <translation>alle hier</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>all limits</source>
        <translation>alle Grenzen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>all months</source>
        <translation>alle Monate</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>all start here</source>
        <translation>alle beginnen hier</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>all the same, no chance</source>
        <translation>alle gleich, kein Zufall</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>all together</source>
        <translation>alle gemeinsam</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>already out</source>
        <translation>schon draußen</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>alternating (the dose is both sides together)</source>
        <translation>abwechselnd (die Dosis zählt beide Seiten zusammen)</translation>
    </message>
    <message>
        <location filename="../../src/interchange/fields.cpp"/>
        <location filename="../../src/interchange/read_values.hpp"/>
        <source>an object { }</source>
        <translation>ein Objekt { }</translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>and %n result(s).</source>
        <translation>
            <numerusform>und %n Ergebnis.</numerusform>
            <numerusform>und %n Ergebnisse.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>another kind: write its name</source>
        <translation>eine andere Art: den Namen schreiben</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>as drafted</source>
        <translation>wie entworfen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>as found </source>
        <translation>wie gefunden </translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>as good as answer 1</source>
        <translation>so gut wie Vorschlag 1</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>as in the rule book</source>
        <translation>wie im Regelbuch</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>as mixed as usual</source>
        <translation>gemischt wie üblich</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>avoid %1</source>
        <translation>meiden: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>before a newer format</source>
        <translation>vor einem neueren Format</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>before a restore</source>
        <translation>vor einem Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>before much was brought in</source>
        <translation>vor einem großen Einlesen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>breath</source>
        <translation>Atem</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>bring back %1</source>
        <translation>%1 zurückholen</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>budget in minutes</source>
        <translation>Budget in Minuten</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>build</source>
        <translation>aufbauen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>by feel</source>
        <translation>nach Gefühl</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>can&apos;t be played on this floor</source>
        <translation>auf dieser Fläche nicht spielbar</translation>
    </message>
    <message>
        <location filename="../../src/sheets/card_sheet.cpp"/>
        <source>card %1 of %2</source>
        <translation>Karte %1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>caution of %1</source>
        <translation>Vorsichtshinweis von %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_rows.cpp"/>
        <source>caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>cautions</source>
        <translation>Vorsichtshinweise</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>challenge</source>
        <translation>fordern</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_paint.cpp"/>
        <source>class ends</source>
        <translation>Kursende</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>class length</source>
        <translation>Kurslänge</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>closing</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>coach notes</source>
        <translation>Coachnotizen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_words.cpp"/>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>coach’s choice</source>
        <translation>Wahl des Coachs</translation>
    </message>
    <message>
        <location filename="../../src/sheets/wall/wall_columns.cpp"/>
        <source>continued</source>
        <translation>Fortsetzung</translation>
    </message>
    <message>
        <location filename="../../src/sheets/card_sheet.cpp"/>
        <source>continued, side %1</source>
        <translation>Fortsetzung, Seite %1</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>cue of %1</source>
        <translation>Cue von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>cues</source>
        <translation>Cues</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>damaged, set aside</source>
        <translation>beschädigt, beiseitegelegt</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/day_bar.cpp"/>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>demands</source>
        <translation>Anforderungen</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>done: load</source>
        <translation>geleistet: Last</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>done: visits</source>
        <translation>geleistet: Besuche</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>dose %1</source>
        <translation>Dosis %1</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>dose of %1</source>
        <translation>Dosis von %1</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>each (the dose is per side)</source>
        <translation>jede Seite (die Dosis gilt je Seite)</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>easier</source>
        <translation>leichter</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>easier and harder</source>
        <translation>leichter und schwerer</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <source>easier ‹ › harder</source>
        <translation>leichter ‹ › schwerer</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_rows.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>easier: %1</source>
        <translation>leichter: %1</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>effort of %1</source>
        <translation>Anstrengung von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>effort, reps in reserve</source>
        <translation>Anstrengung, Wdh. in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>eighth month in a row</source>
        <translation>achter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>empty bar</source>
        <translation>leere Stange</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>empty sled</source>
        <translation>leerer Schlitten</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>every week</source>
        <translation>jede Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>exactly full</source>
        <translation>genau voll</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <location filename="../../src/edit/gym_verbs.cpp"/>
        <source>exercise %1</source>
        <translation>Übung %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>exercise, else</source>
        <translation>Übung, sonst</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>exercises</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>family of %1</source>
        <translation>Familie von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>fifth month in a row</source>
        <translation>fünfter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>fill %1</source>
        <translation>%1 füllen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>fill the open slots</source>
        <translation>die offenen Slots füllen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>fill the open slots of a section</source>
        <translation>die offenen Slots eines Abschnitts füllen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>find </source>
        <translation>suche </translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>find it</source>
        <translation>suchen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>findings</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_lines.cpp"/>
        <source>first go to %1, %2</source>
        <translation>erst zu %1 gehen, %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>first month in a row</source>
        <translation>erster Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/preview_bar.cpp"/>
        <source>fit</source>
        <translation>einpassen</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>flags of %1</source>
        <translation>Vermerke von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_strip.cpp"/>
        <source>floor</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>floor %1</source>
        <translation>Fläche %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_strip.cpp"/>
        <source>floor: %1</source>
        <translation>Fläche: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>follow</source>
        <translation>folgen</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>for a set</source>
        <translation>für einen Satz</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>for the group</source>
        <translation>für die Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_headers.cpp"/>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>format</source>
        <translation>Format</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>fourth month in a row</source>
        <translation>vierter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_room.cpp"/>
        <source>free floor</source>
        <translation>freie Fläche</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>from week 1</source>
        <translation>aus Woche 1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>grip</source>
        <translation>Griff</translation>
    </message>
    <message>
        <location filename="../../src/edit/gym_verbs.cpp"/>
        <source>gym settings</source>
        <translation>Einstellungen des Studios</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>harder</source>
        <translation>schwerer</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>harder →</source>
        <translation>schwerer →</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/notes_rows.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>harder: %1</source>
        <translation>schwerer: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>heads per group</source>
        <translation>Köpfe je Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>high rounds</source>
        <translation>hohe Runden</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>hinge kettlebell · no barbell · grip 2 · unused 3 · retired</source>
        <translation>Hüftbeuge kettlebell · keine Langhantel · Griff 2 · ungenutzt 3 · ausgemustert</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>hip</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>impact</source>
        <translation>Aufprall</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>in power</source>
        <translation>in der Schnellkraft</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>in strength</source>
        <translation>in der Kraft</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>in the finisher</source>
        <translation>im Finisher</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>in the warm-up</source>
        <translation>im Aufwärmen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>in turns; %1 would be wanted</source>
        <translation>abwechselnd; %1 wären gewünscht</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/wait_model.cpp"/>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>instead of %1</source>
        <translation>statt %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>is through</source>
        <translation>ist durch</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>is through with the section, waits for the others</source>
        <translation>ist mit dem Abschnitt durch, wartet auf die anderen</translation>
    </message>
    <message>
        <location filename="../../src/store/judging.cpp"/>
        <source>it has no version</source>
        <translation>sie hat keine Version</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>kg or lb</source>
        <translation>kg oder lb</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>kg or lb. Results keep the weights they have.</source>
        <translation>kg oder lb. Ergebnisse behalten ihre Gewichte.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <location filename="../../src/desk/floor/wait_model.cpp"/>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>kit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <location filename="../../src/edit/gym_verbs.cpp"/>
        <source>kit %1</source>
        <translation>Gerät %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>kit list</source>
        <translation>Geräteliste</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_line.cpp"/>
        <source>knee : hip</source>
        <translation>Knie : Hüfte</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>last %1 on %2</source>
        <translation>zuletzt %1 am %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_headers.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>last used</source>
        <translation>zuletzt genutzt</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>learn</source>
        <translation>lernen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_panel.cpp"/>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <source>leave it out; ask your coach</source>
        <translation>weglassen; den Coach fragen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>leave out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>left in reserve</source>
        <translation>übrig in Reserve</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/class_delegate.cpp"/>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <location filename="../../src/sheets/coach/notes_parts.cpp"/>
        <source>limit %1</source>
        <translation>Grenze: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>load in kg</source>
        <translation>Last in kg</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>load in lb</source>
        <translation>Last in lb</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board_sheet.cpp"/>
        <source>loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>loads are still to be found</source>
        <translation>Lasten sind noch zu finden</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>lock on %1</source>
        <translation>Sperre auf %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>locked</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/theme.cpp"/>
        <source>look</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>low rounds</source>
        <translation>niedrige Runden</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>lower back</source>
        <translation>unterer Rücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_model.cpp"/>
        <source>made</source>
        <translation>angelegt</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <source>main</source>
        <translation>haupt</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>main lift</source>
        <translation>Hauptübung</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>main lift %1</source>
        <translation>Hauptübung %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/wait_model.cpp"/>
        <source>mean</source>
        <translation>im Mittel</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>means</source>
        <translation>bedeutet</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_delegate.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>measured in</source>
        <translation>gemessen in</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>member</source>
        <translation>Mitglied</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>member %1</source>
        <translation>Mitglied %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>member %1, %2</source>
        <translation>Mitglied %1, %2</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>member cards</source>
        <translation>Mitgliederkarten</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>member, else</source>
        <translation>Mitglied, sonst</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>members</source>
        <translation>Mitglieder</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>monotony</source>
        <translation>Monotonie</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>month %1 in %2</source>
        <translation>Monat %1 in %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>month %1 in a row</source>
        <translation>Monat %1 in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_moves.cpp"/>
        <source>move</source>
        <translation>verschieben</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>much alike</source>
        <translation>sehr ähnlich</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>muscles</source>
        <translation>Muskeln</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/must_change.cpp"/>
        <source>must change</source>
        <translation>muss wechseln</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>name of %1</source>
        <translation>Name von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>need it</source>
        <translation>brauchen es</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_headers.cpp"/>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_delegate.cpp"/>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <location filename="../../src/sheets/coach/notes_rows.cpp"/>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <location filename="../../src/edit/gym_verbs.cpp"/>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>new exercise %1</source>
        <translation>neue Übung %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_line.cpp"/>
        <source>new exercises</source>
        <translation>neue Übungen</translation>
    </message>
    <message>
        <location filename="../../src/edit/member_verbs.cpp"/>
        <source>new member %1</source>
        <translation>neues Mitglied %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>new to this gym</source>
        <translation>neu in diesem Studio</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>ninth month in a row</source>
        <translation>neunter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>no</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>no block in this month</source>
        <translation>kein Block in diesem Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>no budget</source>
        <translation>kein Budget</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>no exercise is chosen</source>
        <translation>keine Übung ist gewählt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source>no format</source>
        <translation>kein Format</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_lines.cpp"/>
        <source>no gym is on show</source>
        <translation>kein Studio ist zu sehen</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>no kit</source>
        <translation>kein Gerät</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>no member is chosen</source>
        <translation>kein Mitglied ist gewählt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>no month is earlier</source>
        <translation>kein Monat ist früher</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>no month is later</source>
        <translation>kein Monat ist später</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>no month yet</source>
        <translation>noch kein Monat</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>no month yet: start one to see its hour</source>
        <translation>noch kein Monat: einen beginnen, um seine Stunde zu sehen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>no months before</source>
        <translation>keine Monate davor</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_line.cpp"/>
        <source>no pattern</source>
        <translation>kein Muster</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <location filename="../../src/core/model/shorthand_write.cpp"/>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>no rest</source>
        <translation>keine Pause</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>no results</source>
        <translation>keine Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>nobody</source>
        <translation>niemandem</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/member_panel.cpp"/>
        <source>nobody: the class</source>
        <translation>niemand: der Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_delegate.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>none easier</source>
        <translation>keine leichtere</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_delegate.cpp"/>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>none harder</source>
        <translation>keine schwerere</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>not</source>
        <translation>nicht</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_panel.cpp"/>
        <source>not at hand</source>
        <translation>nicht zur Hand</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>not proved best: another filling could have %1 less</source>
        <translation>nicht als das Beste bewiesen: eine andere Füllung könnte %1 weniger haben</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>not told</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>not used</source>
        <translation>nicht genutzt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/theme.cpp"/>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/slot_strip.cpp"/>
        <source>note for this slot</source>
        <translation>Notiz zum Slot</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>nothing here yet: Ctrl+G adds a pair</source>
        <translation>noch nichts hier: Strg+G fügt ein Paar ein</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>nothing to compare</source>
        <translation>nichts zu vergleichen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>number of the set</source>
        <translation>Nummer des Satzes</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>on its side</source>
        <translation>quer</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>on paper</source>
        <translation>auf dem Papier</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>one main lift at a time, with full rests</source>
        <translation>eine Hauptübung nach der anderen, mit vollen Pausen</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>one time, at most 10 min: 10 s, 1:30, 2 min or none</source>
        <translation>eine Zeit, höchstens 10 min: 10 s, 1:30, 2 min oder none</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>only this house&apos;s own</source>
        <translation>nur das Eigene dieses Hauses</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_words.cpp"/>
        <source>open rounds</source>
        <translation>offene Runden</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <location filename="../../src/desk/stair/member_words.cpp"/>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>open slot</source>
        <translation>offener Slot</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>open the slot of %1</source>
        <translation>den Slot von %1 öffnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>open: %1</source>
        <translation>offen: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>opening</source>
        <translation>Eröffnung</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>outside %1</source>
        <translation>außerhalb von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>outside its band</source>
        <translation>außerhalb seines Bereichs</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>over 99 of 100</source>
        <translation>über 99 von 100</translation>
    </message>
    <message>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <source>overhead</source>
        <translation>Überkopf</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_model.cpp"/>
        <source>pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_clock.cpp"/>
        <source>paused</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>planes</source>
        <translation>Ebenen</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_clock.cpp"/>
        <source>planned %1</source>
        <translation>geplant %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>planned %1 of %2</source>
        <translation>geplant %1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>planned %1; short %2, long %3</source>
        <translation>geplant %1; kurz %2, lang %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>planned time</source>
        <translation>geplante Zeit</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>plates</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <location filename="../../src/sheets/cards/card_content.cpp"/>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>plates %1</source>
        <translation>Scheiben %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>printed %1</source>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>propose the whole month</source>
        <translation>den ganzen Monat vorschlagen</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>proved best</source>
        <translation>als das Beste bewiesen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>pull</source>
        <translation>Ziehen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>push</source>
        <translation>Drücken</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_line.cpp"/>
        <source>push : pull</source>
        <translation>Drücken : Ziehen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>read-only</source>
        <translation>schreibgeschützt</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_moves.cpp"/>
        <source>remove</source>
        <translation>entfernen</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_preview.cpp"/>
        <source>repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/sheets/slot_words.cpp"/>
        <location filename="../../src/sheets/wall/wall_content.cpp"/>
        <source>rest %1</source>
        <translation>Pause %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>rests</source>
        <translation>macht Pause</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>rests after round %1 of %2</source>
        <translation>macht Pause nach Runde %1 von %2</translation>
    </message>
    <message>
        <location filename="../../src/edit/result_verbs.cpp"/>
        <source>results from a table: %1 sets</source>
        <translation>Ergebnisse aus einer Tabelle: %1 Sätze</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>results.csv</source>
        <translation>ergebnisse.csv</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>retire %1</source>
        <translation>%1 ausmustern</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/exercise_editor.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <location filename="../../src/desk/shelf/shelf_page.cpp"/>
        <source>retired</source>
        <translation>ausgemustert</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <location filename="../../src/sheets/wall/wall_stair.cpp"/>
        <source>rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>rule book</source>
        <translation>Regelbuch</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>second month in a row</source>
        <translation>zweiter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <location filename="../../src/sheets/board/board_words.cpp"/>
        <source>see card</source>
        <translation>siehe Karte</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>session-RPE load</source>
        <translation>Session-RPE-Last</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>set or group</source>
        <translation>Satz oder Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>set-up</source>
        <translation>Umbau</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_panel.cpp"/>
        <source>sets by pattern</source>
        <translation>Sätze nach Muster</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>sets, the first of a round highest</source>
        <translation>Sätze, der erste einer Runde am höchsten</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>seventh month in a row</source>
        <translation>siebter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>shared with %1</source>
        <translation>gemeinsam mit %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/minute_rail_words.cpp"/>
        <source>short %1, long %2</source>
        <translation>kurz %1, lang %2</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_panel.cpp"/>
        <source>simulating the class…</source>
        <translation>simuliert den Kurs…</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>sixth month in a row</source>
        <translation>sechster Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_model.cpp"/>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>skill</source>
        <translation>Können</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>spread</source>
        <translation>verteilt</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_page.cpp"/>
        <source>squat · row · main · new · not since July</source>
        <translation>Kniebeuge · row · haupt · neu · nicht seit Juli</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>start %1</source>
        <translation>%1 beginnen</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>start %1 from %2</source>
        <translation>%1 aus %2 beginnen</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_buys.cpp"/>
        <source>start with %1</source>
        <translation>mit %1 starten</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>starting as drafted</source>
        <translation>Start wie entworfen</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>starting by head count</source>
        <translation>Start nach Kopfzahl</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>starting spread</source>
        <translation>verteilter Start</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>starting together</source>
        <translation>gemeinsamer Start</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>starting with %1</source>
        <translation>Start mit %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/theme.cpp"/>
        <source>stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/stair_rows.cpp"/>
        <source>strain</source>
        <translation>Beanspruchung</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_node.cpp"/>
        <source>swap</source>
        <translation>Tausch</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_strip.cpp"/>
        <source>swap %1</source>
        <translation>%1 tauschen</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>swaps</source>
        <translation>Tausch</translation>
    </message>
    <message>
        <location filename="../../src/edit/finding_verbs.cpp"/>
        <source>take back an acceptance</source>
        <translation>eine Zustimmung zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>taken</source>
        <translation>vergeben</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/floor/lane_paint.cpp"/>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>talk</source>
        <translation>Ansprache</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>talk %1</source>
        <translation>Ansprache %1</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>talk outline</source>
        <translation>Redeplan</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>target: %1</source>
        <translation>Ziel: %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <location filename="../../src/desk/bench/sheet_model.cpp"/>
        <location filename="../../src/sheets/wall/wall_columns.cpp"/>
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>tempo of %1</source>
        <translation>Tempo von %1</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>text in quotation marks</source>
        <translation>Text in Anführungszeichen</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>the best way</source>
        <translation>der beste Weg</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>the class ends</source>
        <translation>der Kurs endet</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>the coach talks</source>
        <translation>der Coach spricht</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>the first of the day</source>
        <translation>die erste des Tages</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>the gym file now</source>
        <translation>die Studiodatei jetzt</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/command_lines.cpp"/>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <location filename="../../src/desk/frame/workspace.cpp"/>
        <source>the gym has no month yet</source>
        <translation>das Studio hat noch keinen Monat</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>the gym has none; %1 would be wanted</source>
        <translation>das Studio hat keine; %1 wären gewünscht</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/month_actions.cpp"/>
        <source>the month has no such week</source>
        <translation>der Monat hat keine solche Woche</translation>
    </message>
    <message>
        <location filename="../../src/edit/kit_verbs.cpp"/>
        <source>the usual kit</source>
        <translation>das Übliche</translation>
    </message>
    <message>
        <location filename="../../src/sheets/coach/kit_words.cpp"/>
        <source>then all here</source>
        <translation>dann alle hier</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts zu wiederholen</translation>
    </message>
    <message>
        <location filename="../../src/desk/frame/undo_actions.cpp"/>
        <source>there is nothing to undo</source>
        <translation>es gibt nichts rückgängig zu machen</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>third month in a row</source>
        <translation>dritter Monat in Folge</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_preview.cpp"/>
        <source>this backup</source>
        <translation>diese Sicherung</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/ledger_words.cpp"/>
        <source>this day %1</source>
        <translation>dieser Tag %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>this house</source>
        <translation>dieses Haus</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>this month&apos;s format</source>
        <translation>Format dieses Monats</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>three or four exercises in a circuit, moderate loads</source>
        <translation>drei oder vier Übungen im Zirkel, mittlere Lasten</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_cells.cpp"/>
        <source>together</source>
        <translation>gemeinsam</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>trains</source>
        <translation>trainiert</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>two opposite movements in turn, one rests while the other works</source>
        <translation>zwei gegensätzliche Bewegungen im Wechsel, die eine ruht, während die andere arbeitet</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>under 1 of 100</source>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>unused</source>
        <translation>ungenutzt</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_form.cpp"/>
        <source>upright</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_filter.cpp"/>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <location filename="../../src/desk/shelf/shelf_filter.cpp"/>
        <source>used</source>
        <translation>genutzt</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>used for the %1</source>
        <translation>genutzt, %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/entry_model.cpp"/>
        <source>used in</source>
        <translation>genutzt in</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>very mixed</source>
        <translation>sehr gemischt</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>visits a week</source>
        <translation>Besuche je Woche</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>waits for %1, to do %2 %3</source>
        <translation>wartet auf %1, für %2 %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/lane_legend.cpp"/>
        <source>waits for kit</source>
        <translation>wartet auf Geräte</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_words.cpp"/>
        <source>waits to do %1 %2</source>
        <translation>wartet, für %1 %2</translation>
    </message>
    <message>
        <location filename="../../src/sheets/sheet_words.cpp"/>
        <source>wall sheet</source>
        <translation>Wandblatt</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <location filename="../../src/desk/ledger/ledger_page.cpp"/>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>week %1</source>
        <translation>Woche %1</translation>
    </message>
    <message>
        <location filename="../../src/edit/month_verbs.cpp"/>
        <source>week %1 of the stair</source>
        <translation>Woche %1 der Treppe</translation>
    </message>
    <message>
        <location filename="../../src/desk/stair/week_models.cpp"/>
        <source>week %1, %2 %3</source>
        <translation>Woche %1, %2 %3</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>weeks %1</source>
        <translation>Wochen %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/findings_words.cpp"/>
        <source>weeks %1–%2</source>
        <translation>Wochen %1–%2</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/gym_lines.cpp"/>
        <source>weights in</source>
        <translation>Gewichte in</translation>
    </message>
    <message>
        <location filename="../../src/desk/gym/kit_model.cpp"/>
        <source>weights in stock</source>
        <translation>vorhandene Gewichte</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_page.cpp"/>
        <source>weights in the penalty</source>
        <translation>Gewichte der Strafpunkte</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>what is limited</source>
        <translation>was begrenzt ist</translation>
    </message>
    <message>
        <location filename="../../src/desk/limits/limits_model.cpp"/>
        <source>where the rule book has it from</source>
        <translation>woher das Regelbuch es hat</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_model.cpp"/>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <location filename="../../src/desk/propose/propose_words.cpp"/>
        <source>with the class played</source>
        <translation>mit durchgespieltem Kurs</translation>
    </message>
    <message>
        <location filename="../../src/desk/almanac/almanac_words.cpp"/>
        <source>within %1</source>
        <translation>innerhalb von %1</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/beam_scale.cpp"/>
        <source>within its band</source>
        <translation>innerhalb seines Bereichs</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/backup_words.cpp"/>
        <source>you asked for it</source>
        <translation>so gewünscht</translation>
    </message>
    <message>
        <location filename="../../src/desk/sheets/sheet_report.cpp"/>
        <source>“%1” (page %2)</source>
        <translation>„%1“ (Seite %2)</translation>
    </message>
    <message>
        <location filename="../../src/interchange/references.cpp"/>
        <source>“%1” can&apos;t be timed in %2: it has no pace for that. Give the dose in %3, or give the exercise its pace.</source>
        <translation>Für „%1“ lässt sich in %2 keine Zeit rechnen: dafür fehlt ein Tempo. Die Dosis in %3 angeben oder der Übung ihr Tempo geben.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/stock_text.cpp"/>
        <source>“%1” could be one load or two: write 2.5 for two and a half, and a blank behind the comma between two loads.</source>
        <translation>„%1“ könnte eine Last oder zwei sein: 2.5 für zweieinhalb schreiben und zwischen zwei Lasten ein Leerzeichen hinter das Komma.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” could not be opened (%2). Nothing was changed. If the program was stopped while writing to it, copy the file and the one named “-wal” beside it to a folder of your own, and open the copy.</source>
        <translation>„%1“ ließ sich nicht öffnen (%2). Nichts wurde geändert. Wurde das Programm beim Schreiben angehalten, die Datei und die mit „-wal“ benannte daneben in einen eigenen Ordner kopieren und die Kopie öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” could not be used (%2). Nothing was stored: it holds what it held before. Close it and open it again; if this comes back, restore the latest good backup.</source>
        <translation>„%1“ ließ sich nicht benutzen (%2). Nichts wurde gespeichert: der bisherige Inhalt ist noch da. Schließen und wieder öffnen; kommt das wieder, die letzte gute Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/pdf.cpp"/>
        <source>“%1” could not be written: %2. No file was left behind. Make room or choose another folder, and print again.</source>
        <translation>„%1“ war nicht zu schreiben: %2. Keine Datei blieb zurück. Platz schaffen oder einen anderen Ordner wählen und noch einmal drucken.</translation>
    </message>
    <message>
        <location filename="../../src/sheets/pdf.cpp"/>
        <source>“%1” could not be written: %2. The file that was there before is kept. Make room or choose another folder, and print again.</source>
        <translation>„%1“ war nicht zu schreiben: %2. Die Datei, die vorher da war, ist noch da. Platz schaffen oder einen anderen Ordner wählen und noch einmal drucken.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” does not say how much: write 0 to 3 behind it, such as %2 2.</source>
        <translation>„%1“ sagt nicht, wie viel: 0 bis 3 dahinter schreiben, etwa %2 2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/backups/gym_backups.cpp"/>
        <source>“%1” holds all of this gym as it is now. You go on in “%2”.</source>
        <translation>„%1“ enthält dieses ganze Studio, wie es jetzt ist. Weiter geht es in „%2“.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” holds something that this Blockwright cannot read (%2). It was left exactly as it is. Restore the latest good backup.</source>
        <translation>„%1“ enthält etwas, das dieses Blockwright nicht lesen kann (%2). Es blieb genau, wie es ist. Die letzte gute Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>“%1” is a word of this gym&apos;s own; it is kept, and no rule looks at it.</source>
        <translation>„%1“ ist ein eigenes Wort dieses Studios; es bleibt, und keine Regel sieht es an.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” is damaged (%2). It was left exactly as it is. Keep it, and restore the latest good backup.</source>
        <translation>„%1“ ist beschädigt (%2). Es blieb genau, wie es ist. Aufheben und die letzte gute Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/references.cpp"/>
        <source>“%1” is here a second time. Give it another id, or take one of the two out.</source>
        <translation>„%1“ steht hier ein zweites Mal. Eine andere Kennung vergeben oder eines der beiden herausnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is in the table already: write another name.</source>
        <translation>„%1“ steht schon in der Tabelle: einen anderen Namen schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/fields.cpp"/>
        <source>“%1” is missing here.</source>
        <translation>„%1“ fehlt hier.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is no class length: write whole minutes from 5 to 300, such as 60.</source>
        <translation>„%1“ ist keine Kurslänge: ganze Minuten von 5 bis 300 schreiben, etwa 60.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>“%1” is no date: write it as 2026-09-03 or 3.9.2026.</source>
        <translation>„%1“ ist kein Datum: als 2026-09-03 oder 3.9.2026 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is no kit of this gym: write %2, with how many before it, such as 2 %3.</source>
        <translation>„%1“ ist kein Gerät dieses Studios: %2 schreiben, mit der Anzahl davor, etwa 2 %3.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is no kit of this gym: write its name, such as %2.</source>
        <translation>„%1“ ist kein Gerät dieses Studios: den Namen schreiben, etwa %2.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>“%1” is no number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/set_shorthand.cpp"/>
        <source>“%1” is no set: write 40x5 2 for 40 at 5 repetitions with 2 left, 8 2 without load, 40x5x3 for three alike, and “;” between sets.</source>
        <translation>„%1“ ist kein Satz: 40x5 2 schreiben für 40 bei 5 Wiederholungen mit 2 übrig, 8 2 ohne Last, 40x5x3 für drei gleiche, und „;“ zwischen Sätzen.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/results_row.cpp"/>
        <source>“%1” is no whole number from %2 to %3.</source>
        <translation>„%1“ ist keine ganze Zahl von %2 bis %3.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>“%1” is none of the words known here: %2.</source>
        <translation>„%1“ ist keines der hier bekannten Wörter: %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/calendar.cpp"/>
        <source>“%1” is not a date: write it as 2026-09-03.</source>
        <translation>„%1“ ist kein Datum: als 2026-09-03 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is not a dose: write %2.</source>
        <translation>„%1“ ist keine Dosis: %2 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” is not a gym file. It was left exactly as it is. Choose a file that ends in .bwgym.</source>
        <translation>„%1“ ist keine Studiodatei. Sie blieb genau, wie sie ist. Eine Datei wählen, die auf .bwgym endet.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/fields.cpp"/>
        <source>“%1” is not a key this version knows; it is kept, and written again on export.</source>
        <translation>„%1“ ist kein Schlüssel, den diese Version kennt; er bleibt und wird beim Ausgeben wieder geschrieben.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is not a length of time: write %2.</source>
        <translation>„%1“ ist keine Zeit: %2 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/interchange/read_values.cpp"/>
        <source>“%1” is not a mass: write kilograms above 0 and at most 2000, such as “2.5”.</source>
        <translation>„%1“ ist keine Masse: Kilogramm über 0 und höchstens 2000 schreiben, etwa „2.5“.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/calendar.cpp"/>
        <source>“%1” is not a month: write it as 2026-09.</source>
        <translation>„%1“ ist kein Monat: als 2026-09 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/floor/floor_controls.cpp"/>
        <source>“%1” is not a number of members.</source>
        <translation>„%1“ ist keine Zahl von Mitgliedern.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is not a number of rounds: write %2, from 1 to 20.</source>
        <translation>„%1“ ist keine Rundenzahl: %2 schreiben, von 1 bis 20.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is not a rest: write %2.</source>
        <translation>„%1“ ist keine Pause: %2 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>“%1” is not a start. Understood: together, spread, or heads per group such as 6 + 6.</source>
        <translation>„%1“ ist kein Start. Verstanden werden: gemeinsam, verteilt oder Köpfe je Gruppe, etwa 6 + 6.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/tempo.cpp"/>
        <source>“%1” is not a tempo: write four figures such as 31X0 (lowering, pause, lifting, pause; X is as fast as possible).</source>
        <translation>„%1“ ist kein Tempo: vier Zeichen schreiben, etwa 31X0 (senken, halten, heben, halten; X ist so schnell wie möglich).</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is not an effort: write the repetitions in reserve, from 0 to 10, as %2.</source>
        <translation>„%1“ ist keine Anstrengung: die Wiederholungen in Reserve von 0 bis 10 schreiben, als %2.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_read.cpp"/>
        <source>“%1” is not on the Shelf yet. Choose one of the list, or add it.</source>
        <translation>„%1“ ist noch nicht im Regal. Eine aus der Liste wählen oder aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/edit/block_verbs.cpp"/>
        <source>“%1” is not on the Shelf.</source>
        <translation>„%1“ ist nicht im Regal.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>“%1” is not on the Shelf: choose a line of the list, or add it first.</source>
        <translation>„%1“ ist nicht im Regal: eine Zeile der Liste wählen oder erst aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” is not there. Nothing was changed. Check the name and the folder.</source>
        <translation>„%1“ ist nicht da. Nichts wurde geändert. Name und Ordner prüfen.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is not understood: write %2.</source>
        <translation>„%1“ ist nicht verständlich: %2 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is not understood: write a whole number from %2 to %3.</source>
        <translation>„%1“ ist nicht verständlich: eine ganze Zahl von %2 bis %3 schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/stock_text.cpp"/>
        <source>“%1” is not understood: write each load and how many there are, such as 8x2, 12x4, 16.</source>
        <translation>„%1“ ist nicht verständlich: jede Last und ihre Anzahl schreiben, etwa 8x2, 12x4, 16.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is not understood: write how much of a set it counts, from 0 to 1, such as 0.5.</source>
        <translation>„%1“ ist nicht verständlich: schreiben, wie viel von einem Satz es zählt, von 0 bis 1, etwa 0.5.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>“%1” is not understood: write lowest and highest, such as %2.</source>
        <translation>„%1“ ist nicht verständlich: kleinsten und größten Wert schreiben, etwa %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is not understood: write minutes, at most 60, such as 3, 2:30 or 90 s.</source>
        <translation>„%1“ ist nicht verständlich: Minuten schreiben, höchstens 60, etwa 3, 2:30 oder 90 s.</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/limit_text.cpp"/>
        <source>“%1” is not understood: write one number, such as %2.</source>
        <translation>„%1“ ist nicht verständlich: eine Zahl schreiben, etwa %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/gym_text.cpp"/>
        <source>“%1” is not understood: write what it weighs empty, such as 20.</source>
        <translation>„%1“ ist nicht verständlich: schreiben, was es leer wiegt, etwa 20.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is on the Shelf already: write another name.</source>
        <translation>„%1“ ist schon im Regal: einen anderen Namen schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/bench_page.cpp"/>
        <source>“%1” is on the Shelf now, taken for %2, 3 s a rep, no kit.</source>
        <translation>„%1“ ist jetzt im Regal, angenommen als %2, 3 s je Wdh., ohne Gerät.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is on the Shelf, retired: bring it back, or write another name.</source>
        <translation>„%1“ ist im Regal, ausgemustert: zurückholen oder einen anderen Namen schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/store/sqlite_gym_file.cpp"/>
        <source>“%1” is open for reading only, so nothing was stored. To change it, allow writing to the file and its folder, or save a copy in a folder of your own; then open that.</source>
        <translation>„%1“ ist nur zum Lesen geöffnet, deshalb wurde nichts gespeichert. Zum Ändern das Schreiben in die Datei und ihren Ordner erlauben oder eine Kopie in einem eigenen Ordner speichern und diese öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/sqlite_gym_file.cpp"/>
        <source>“%1” is open for reading only, so nothing was stored: %2 writes to it, says “%1.lock”. Close it there; if it is not open there any more, delete that file. Then open it here again.</source>
        <translation>„%1“ ist nur zum Lesen geöffnet, deshalb wurde nichts gespeichert: %2 schreibt hinein, sagt „%1.lock“. Dort schließen; ist es dort nicht mehr offen, jene Datei löschen. Dann hier wieder öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/sqlite_gym_file.cpp"/>
        <source>“%1” is open for reading only, so nothing was stored: %2 writes to it. Close it there, then open it here again.</source>
        <translation>„%1“ ist nur zum Lesen geöffnet, deshalb wurde nichts gespeichert: %2 schreibt hinein. Dort schließen, dann hier wieder öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/restoring.cpp"/>
        <source>“%1” is open: %2 writes to it, says “%1.lock”. Nothing was changed. Close it there; if it is not open there any more, delete that file. Then restore again.</source>
        <translation>„%1“ ist offen: %2 schreibt hinein, sagt „%1.lock“. Nichts wurde geändert. Dort schließen; ist es dort nicht mehr offen, jene Datei löschen. Dann noch einmal wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/store/restoring.cpp"/>
        <source>“%1” is open: %2 writes to it. Nothing was changed. Close it there, then restore again.</source>
        <translation>„%1“ ist offen: %2 schreibt hinein. Nichts wurde geändert. Dort schließen, dann noch einmal wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is out of range: a dose is above 0 and at most %2.</source>
        <translation>„%1“ geht nicht: eine Dosis liegt über 0 und bei höchstens %2.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/stock_text.cpp"/>
        <source>“%1” is out of range: a load is above 0 and at most 2000 kg, and there are 1 to 1000 of it.</source>
        <translation>„%1“ geht nicht: eine Last liegt über 0 und bei höchstens 2000 kg, und es gibt 1 bis 1000 davon.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is out of range: a pace is above 0 and at most 1000.</source>
        <translation>„%1“ geht nicht: ein Tempo liegt über 0 und bei höchstens 1000.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <source>“%1” is out of range: a part is above 0 and at most 100 %.</source>
        <translation>„%1“ geht nicht: ein Teil liegt über 0 und bei höchstens 100 %.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is out of range: at most %2 min.</source>
        <translation>„%1“ geht nicht: höchstens %2 min.</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/set_shorthand.cpp"/>
        <source>“%1” is out of range: at most 1000 repetitions, 2000 kg, 10 left and 100 sets.</source>
        <translation>„%1“ geht nicht: höchstens 1000 Wiederholungen, 2000 kg, 10 übrig und 100 Sätze.</translation>
    </message>
    <message>
        <location filename="../../src/desk/bench/sheet_delegate.cpp"/>
        <source>“%1” is retired: no longer offered, but it may stand here. Ctrl+R on the Shelf brings it back.</source>
        <translation>„%1“ ist ausgemustert: nicht mehr angeboten, darf hier aber stehen. Strg+R im Regal holt die Übung zurück.</translation>
    </message>
    <message>
        <location filename="../../src/store/restoring.cpp"/>
        <source>“%1” is the gym file itself. Nothing was changed. Choose one of its backups.</source>
        <translation>„%1“ ist die Studiodatei selbst. Nichts wurde geändert. Eine ihrer Sicherungen wählen.</translation>
    </message>
    <message>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <source>“%1” is the wrong way round: write the smaller number first.</source>
        <translation>„%1“ ist verkehrt herum: die kleinere Zahl zuerst schreiben.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” is there already, and was left as it is. Choose another name.</source>
        <translation>„%1“ ist schon da und blieb, wie es ist. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” may not be changed where it is, so nothing was stored: it holds what it held before. Allow writing to the file and its folder, or save a copy in a folder of your own.</source>
        <translation>„%1“ darf dort nicht geändert werden, deshalb wurde nichts gespeichert: der bisherige Inhalt ist noch da. Das Schreiben in die Datei und ihren Ordner erlauben oder eine Kopie in einem eigenen Ordner speichern.</translation>
    </message>
    <message>
        <location filename="../../src/store/trouble.cpp"/>
        <source>“%1” may not be read by you. Nothing was changed. Ask its owner to allow it, or open another file.</source>
        <translation>„%1“ darf von diesem Konto nicht gelesen werden. Nichts wurde geändert. Beim Besitzer die Erlaubnis erbitten oder eine andere Datei öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/sqlite_gym_file.cpp"/>
        <source>“%1” was moved, deleted or replaced while it was open, so nothing was stored. Save a copy under a new name and go on with that; it will hold all that was stored before.</source>
        <translation>„%1“ wurde verschoben, gelöscht oder ersetzt, während es offen war, deshalb wurde nichts gespeichert. Eine Kopie unter neuem Namen speichern und damit weiterarbeiten; sie enthält alles vorher Gespeicherte.</translation>
    </message>
    <message>
        <location filename="../../src/store/making.cpp"/>
        <source>“%1” was not made (%2). Nothing of it is left, and no other file has changed. Free some space, or choose a folder that you may write to; then do it again.</source>
        <translation>„%1“ wurde nicht angelegt (%2). Davon ist nichts übrig, und keine andere Datei hat sich geändert. Platz schaffen oder einen beschreibbaren Ordner wählen; dann noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../src/store/making.cpp"/>
        <source>“%1” was not made: “%2” is left there from another gym file. Move that file elsewhere, or choose another name.</source>
        <translation>„%1“ wurde nicht angelegt: „%2“ liegt dort noch von einer anderen Studiodatei. Jene Datei woandershin verschieben oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../src/store/judging.cpp"/>
        <source>“%1” was written by a newer Blockwright: it needs version %2 or later (it is a gym file of version %3, this program reads up to %4). It was left exactly as it is. Update Blockwright, then open it again.</source>
        <translation>„%1“ wurde von einem neueren Blockwright geschrieben: nötig ist Version %2 oder später (es ist eine Studiodatei der Version %3, dieses Programm liest bis %4). Sie blieb genau, wie sie ist. Blockwright aktualisieren und sie noch einmal öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/opening.cpp"/>
        <source>“%1” was written by an older Blockwright and can&apos;t be brought up to date where it is. It was left exactly as it is. Close it elsewhere, or copy it to a folder of your own; then open it again.</source>
        <translation>„%1“ wurde von einem älteren Blockwright geschrieben und lässt sich dort nicht auf den neuen Stand bringen. Es blieb genau, wie es ist. Anderswo schließen oder in einen eigenen Ordner kopieren; dann noch einmal öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/store/backing_up.cpp"/>
        <source>“%1” was written by an older Blockwright, and was not brought up to date because no backup of it could be made first (%2). It was left exactly as it is. Free some space on that disk, or allow writing to “%3”; then open it again.</source>
        <translation>„%1“ wurde von einem älteren Blockwright geschrieben und nicht auf den neuen Stand gebracht, weil vorher keine Sicherung möglich war (%2). Es blieb genau, wie es ist. Platz auf dem Datenträger schaffen oder das Schreiben nach „%3“ erlauben; dann noch einmal öffnen.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/member_dialog.cpp"/>
        <source>“avoid” rules out every exercise that asks for it, “limit” those that ask for most of it. A flag only looks for another exercise; about pain, injury or return to training a licensed professional decides.</source>
        <translation>„meiden“ schließt jede Übung aus, die es verlangt, „begrenzen“ jene, die das meiste davon verlangen. Ein Vermerk sucht nur eine andere Übung; über Schmerz, Verletzung oder Rückkehr ins Training entscheidet eine zugelassene Fachperson.</translation>
    </message>
    <message>
        <location filename="../../src/desk/ledger/import_dialog.cpp"/>
        <source>…and more; these are the first.</source>
        <translation>…und mehr; dies sind die ersten.</translation>
    </message>
    <message>
        <location filename="../../src/desk/shelf/family_view.cpp"/>
        <source>← easier</source>
        <translation>← leichter</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <location filename="../../src/store/writer_lock.cpp"/>
        <source>Another program</source>
        <translation>Ein anderes Programm</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>abdominals</source>
        <translation>Bauchmuskeln</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>abductors</source>
        <translation>Abduktoren</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>adductors</source>
        <translation>Adduktoren</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>alternating</source>
        <translation>abwechselnd</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>avoid</source>
        <translation>meiden</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>barbell</source>
        <translation>Langhantel</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>biceps</source>
        <translation>Bizeps</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>bodyweight</source>
        <translation>Körper</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>breath</source>
        <translation>Atem</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>build</source>
        <translation>aufbauen</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>calves</source>
        <translation>Waden</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>carry</source>
        <translation>Tragen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>challenge</source>
        <translation>fordern</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>chest</source>
        <translation>Brust</translation>
    </message>
    <message>
        <location filename="../../src/core/ledger/ledger_rules.cpp"/>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>demands</source>
        <translation>Anforderungen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>each</source>
        <translation>jede Seite</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>finisher</source>
        <translation>Finisher</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>forearms</source>
        <translation>Unterarme</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>front shoulder</source>
        <translation>vordere Schulter</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>frontal</source>
        <translation>frontal</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>glutes</source>
        <translation>Gesäß</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>grip</source>
        <translation>Griff</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>hamstrings</source>
        <translation>Beinbeuger</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>heavy then fast</source>
        <translation>Schwer-dann-schnell</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>heavy then long</source>
        <translation>Schwer-dann-lang</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>hinge</source>
        <translation>Hüftbeuge</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>hip flexors</source>
        <translation>Hüftbeuger</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>horizontal pull</source>
        <translation>Zug horizontal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>horizontal push</source>
        <translation>Druck horizontal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>impact</source>
        <translation>Aufprall</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>implement</source>
        <translation>Einzelgerät</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>kcal</source>
        <translation>kcal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>kit</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>lats</source>
        <translation>Latissimus</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>learn</source>
        <translation>lernen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>limit</source>
        <translation>begrenzen</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>locomotion</source>
        <translation>Fortbewegung</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>look</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>lower back</source>
        <translation>unterer Rücken</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>lumbar</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>lunge</source>
        <translation>Ausfallschritt</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>measure</source>
        <translation>Maß</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>mobility</source>
        <translation>Beweglichkeit</translation>
    </message>
    <message>
        <location filename="../../src/core/balance/balance_limits.cpp"/>
        <location filename="../../src/core/rules/book/staleness.cpp"/>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>muscles</source>
        <translation>Muskeln</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>neck</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <location filename="../../src/core/model/exercise_read.cpp"/>
        <location filename="../../src/core/model/exercise_text.cpp"/>
        <location filename="../../src/core/model/shorthand.cpp"/>
        <location filename="../../src/desk/shelf/entry_words.cpp"/>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <location filename="../../src/interchange/read_shelf.cpp"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>obliques</source>
        <translation>schräge Bauchmuskeln</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>opposed</source>
        <translation>Gegensatzpaare</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>overhead</source>
        <translation>Überkopf</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>patterns</source>
        <translation>Muster</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>planes</source>
        <translation>Ebenen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>power</source>
        <translation>Schnellkraft</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>quadriceps</source>
        <translation>Quadrizeps</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>rear shoulder</source>
        <translation>hintere Schulter</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>reps</source>
        <translation>Wdh.</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>roles</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>rotation</source>
        <translation>Rotation</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>round trip</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>sagittal</source>
        <translation>sagittal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <location filename="../../src/core/model/place.cpp"/>
        <location filename="../../src/core/rules/accepting.cpp"/>
        <source>session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>set up</source>
        <translation>Umbau</translation>
    </message>
    <message>
        <location filename="../../src/core/propose/whole_costs.cpp"/>
        <location filename="../../src/core/rules/book/muscle_dose.cpp"/>
        <location filename="../../src/core/rules/book/scales.cpp"/>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>side shoulder</source>
        <translation>seitliche Schulter</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>skill</source>
        <translation>Können</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>sled</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>straight heavy</source>
        <translation>Einzeln-schwer</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>strength heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>strength long</source>
        <translation>lang</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the chest</source>
        <translation>die Brust</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the glutes</source>
        <translation>das Gesäß</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the hamstrings</source>
        <translation>die Beinbeuger</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the lats</source>
        <translation>den Latissimus</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the quadriceps</source>
        <translation>den Quadrizeps</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>the upper back</source>
        <translation>den oberen Rücken</translation>
    </message>
    <message>
        <location filename="../../src/store/rows/block_writing.cpp"/>
        <source>together</source>
        <translation>gemeinsam</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>transverse</source>
        <translation>transversal</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>triceps</source>
        <translation>Trizeps</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>trunk stability</source>
        <translation>Rumpfstabilität</translation>
    </message>
    <message>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <location filename="../../src/core/rules/book/large_muscles.hpp"/>
        <source>upper back</source>
        <translation>oberer Rücken</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>vertical pull</source>
        <translation>Zug vertikal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <source>vertical push</source>
        <translation>Druck vertikal</translation>
    </message>
    <message>
        <location filename="../../include/blockwright/model/vocabulary.hpp"/>
        <location filename="../../src/core/model/vocabulary.cpp"/>
        <source>warm up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <location filename="../../src/core/rules/book/stair_shape.cpp"/>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>why nothing is easier</source>
        <translation>warum nichts leichter ist</translation>
    </message>
    <message>
        <location filename="../../src/edit/shelf_verbs.cpp"/>
        <source>why nothing is harder</source>
        <translation>warum nichts schwerer ist</translation>
    </message>
</context>
</TS>
