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
    <name>CarryPage</name>
    <message numerus="yes">
        <source>Take %n over</source>
        <comment>wires</comment>
        <translation>
            <numerusform>Take %n over</numerusform>
            <numerusform>Take %n over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at most</source>
        <comment>trials</comment>
        <translation>
            <numerusform>%n at most</numerusform>
            <numerusform>%n at most</numerusform>
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
    <name>HandOverPage</name>
    <message numerus="yes">
        <source>Not yet: %n to see to above</source>
        <comment>what stops it</comment>
        <translation>
            <numerusform>Not yet: %n to see to above</numerusform>
            <numerusform>Not yet: %n to see to above</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n more</source>
        <comment>what asks</comment>
        <translation>
            <numerusform>%1, and %n more</numerusform>
            <numerusform>%1, and %n more</numerusform>
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
    <name>ProofsPage</name>
    <message numerus="yes">
        <source>Keep %n proved</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>Keep %n proved</numerusform>
            <numerusform>Keep %n proved</numerusform>
        </translation>
    </message>
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
    <name>ProvePage</name>
    <message numerus="yes">
        <source>%n not on again: cannot be proved yet</source>
        <comment>proofs</comment>
        <translation>
            <numerusform>%n not on again: cannot be proved yet</numerusform>
            <numerusform>%n not on again: cannot be proved yet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without an answer</source>
        <comment>complaints and functions</comment>
        <translation>
            <numerusform>%n without an answer</numerusform>
            <numerusform>%n without an answer</numerusform>
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
    <name>undercowl::ui::HandOverView</name>
    <message numerus="yes">
        <source>%n not done or not proved</source>
        <translation>
            <numerusform>%n not done or not proved</numerusform>
            <numerusform>%n not done or not proved</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::ProofsView</name>
    <message numerus="yes">
        <source>%n proved</source>
        <translation>
            <numerusform>%n proved</numerusform>
            <numerusform>%n proved</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>undercowl::ui::RestoreView</name>
    <message numerus="yes">
        <source>%n jobs</source>
        <translation>
            <numerusform>%n job</numerusform>
            <numerusform>%n jobs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Brought back as it was on %1: %n entries.</source>
        <translation>
            <numerusform>Brought back as it was on %1: %n entry.</numerusform>
            <numerusform>Brought back as it was on %1: %n entries.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places of the backup could not be read.</source>
        <translation>
            <numerusform>%n place of the backup could not be read.</numerusform>
            <numerusform>%n places of the backup could not be read.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photos or memos are in none of the backups here.</source>
        <translation>
            <numerusform>%n photo or memo is in none of the backups here.</numerusform>
            <numerusform>%n photos or memos are in none of the backups here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things in it are missing or damaged.</source>
        <translation>
            <numerusform>%n thing in it is missing or damaged.</numerusform>
            <numerusform>%n things in it are missing or damaged.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</source>
        <translation>
            <numerusform>Some of its photos and memos are in earlier backups, of which %n is not in the same folder. Put it there, or bring back what is here.</numerusform>
            <numerusform>Some of its photos and memos are in earlier backups, of which %n are not in the same folder. Put them there, or bring back what is here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A new shop of what can be read: %n entries.</source>
        <translation>
            <numerusform>A new shop of what can be read: %n entry.</numerusform>
            <numerusform>A new shop of what can be read: %n entries.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them only the copies beside it still had.</source>
        <translation>
            <numerusform>%n of them only the copies beside it still had.</numerusform>
            <numerusform>%n of them only the copies beside it still had.</numerusform>
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
