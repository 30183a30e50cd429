// Words on a surface, in one of the sizes of the type scale. Wraps; never elides unless told to.
//
//   kind    Label.Value, Code, Name, Title, Action, Body or Aside
//   strong  bold; set for Value, Code, Name, Title and Action
//   mono    the monospaced face, for values and codes
//   tone    the text's colour, Theme.ink unless the kind is Aside
import QtQuick

Text {
    id: root

    enum Kind {
        Body,
        Aside,
        Title,
        Action,
        Name,
        Code,
        Value
    }

    property int kind: Label.Body
    property bool strong: kind >= Label.Title
    property bool mono: kind === Label.Code
    property color tone: kind === Label.Aside ? Theme.quiet : Theme.ink

    color: tone
    font.family: mono ? Theme.monoFamily : Theme.family
    font.weight: strong ? Font.Bold : Font.Normal
    font.pixelSize: switch (kind) {
    case Label.Aside:
        return Theme.asideSize;
    case Label.Title:
        return Theme.titleSize;
    case Label.Action:
        return Theme.actionSize;
    case Label.Name:
        return Theme.nameSize;
    case Label.Code:
        return Theme.codeSize;
    case Label.Value:
        return Theme.valueSize;
    default:
        return Theme.textSize;
    }
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
}
