<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>texts</name>
    <message numerus="yes">
        <location filename="../../src/desk/ledger/ledger_actions.cpp"/>
        <source>

%n backup(s) hold the member, or can&apos;t be read. To be rid of them, too, delete them from %1.</source>
        <translation>
            <numerusform>

%n backup holds the member, or can&apos;t be read. To be rid of it, too, delete it from %1.</numerusform>
            <numerusform>

%n backups hold the member, or can&apos;t be read. To be rid of them, too, delete them from %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/block_fields.cpp"/>
        <source> visits</source>
        <translation>
            <numerusform> visit</numerusform>
            <numerusform> visits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%1 holds %n month(s), </source>
        <translation>
            <numerusform>%1 holds %n month, </numerusform>
            <numerusform>%1 holds %n months, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%n exercise(s), </source>
        <translation>
            <numerusform>%n exercise, </numerusform>
            <numerusform>%n exercises, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>%n member(s) </source>
        <translation>
            <numerusform>%n member </numerusform>
            <numerusform>%n members </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/finding_counts.cpp"/>
        <source>Go to the next finding (%n accepted, not counted)</source>
        <translation>
            <numerusform>Go to the next finding (%n accepted, not counted)</numerusform>
            <numerusform>Go to the next finding (%n accepted, not counted)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../src/desk/frame/bundle_actions.cpp"/>
        <source>and %n result(s).</source>
        <translation>
            <numerusform>and %n result.</numerusform>
            <numerusform>and %n results.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>words</name>
</context>
</TS>
