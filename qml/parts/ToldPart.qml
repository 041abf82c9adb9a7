pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// A part of a page that is told in sentences: a heading, the sentences, and a line for each tasting; each may be left out.
Column {
    id: root

    property string heading: ""
    property string spoken: heading
    // A list of strings: the 6.4 checker does not let a QStringList be bound to list<string>.
    property var lines: []
    property Rows rows: null

    spacing: 10

    SectionTitle {
        width: parent.width
        visible: text !== ""
        text: root.heading
    }
    Repeater {
        model: root.lines

        Body {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
    Column {
        width: parent.width
        visible: root.rows !== null && root.rows.count > 0
        topPadding: root.heading !== "" ? 6 : 0
        spacing: 14
        Accessible.role: Accessible.List
        Accessible.name: root.spoken

        Repeater {
            model: root.rows

            Column {
                id: line

                required property string when
                required property string wrote
                required property string came

                width: root.width
                spacing: 2
                Accessible.role: Accessible.ListItem
                Accessible.name: qsTr("%1: %2; %3").arg(line.when).arg(line.wrote).arg(line.came)

                Small { width: parent.width; text: line.when; Accessible.ignored: true }
                Body { width: parent.width; text: qsTr("%1: %2.").arg(line.wrote).arg(line.came); Accessible.ignored: true }
            }
        }
    }
}
