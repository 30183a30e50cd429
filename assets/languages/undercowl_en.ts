<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en">
<context>
    <name>CaptureFooter</name>
    <message numerus="yes">
        <source>Done, %n kept</source>
        <comment>photos</comment>
        <translation>
            <numerusform>Done, %n kept</numerusform>
            <numerusform>Done, %n kept</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CheckWalkBody</name>
    <message numerus="yes">
        <source>%n to go</source>
        <comment>checks</comment>
        <translation>
            <numerusform>%n to go</numerusform>
            <numerusform>%n to go</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>JobPage</name>
    <message numerus="yes">
        <source>%n to do</source>
        <comment>afterwards</comment>
        <translation>
            <numerusform>%n to do</numerusform>
            <numerusform>%n to do</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <comment>findings</comment>
        <translation>
            <numerusform>%n open</numerusform>
            <numerusform>%n open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to come</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%n to come</numerusform>
            <numerusform>%n to come</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ProvePage</name>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n not on again: cannot be proved yet</numerusform>
            <numerusform>%n not on again: cannot be proved yet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Wiring</name>
    <message numerus="yes">
        <source>%n places</source>
        <translation>
            <numerusform>%n place</numerusform>
            <numerusform>%n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::BackupView</name>
    <message numerus="yes">
        <source>%1 was written and read again: %n photos and memos, %2.</source>
        <translation>
            <numerusform>%1 was written and read again: %n photo or memo, %2.</numerusform>
            <numerusform>%1 was written and read again: %n photos and memos, %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::StrokeView</name>
    <message numerus="yes">
        <source>%n wires confirmed</source>
        <translation>
            <numerusform>%n wire confirmed</numerusform>
            <numerusform>%n wires confirmed</numerusform>
        </translation>
    </message>
</context>
</TS>
