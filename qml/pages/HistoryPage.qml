pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// History: the log in plain words, with the check of its chain and commitment.
PageFrame {
    id: root

    required property HistoryModel model

    objectName: "historyPage"
    shape: model.shape
    headline: model.headline
    lead: model.lead
    primary: qsTr("Check again")
    onPrimaryRequested: model.load()
    links: [
        LinkButton { objectName: "historyOutcome"; visible: root.model.revealed; text: qsTr("What came out"); onClicked: root.model.toOutcome() }
    ]
    Component.onCompleted: model.load()

    Column {
        width: parent.width
        spacing: 4

        Repeater {
            model: root.model.checks

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    Small {
        width: parent.width
        text: root.model.checkedAt
    }
    Column {
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("The record")

        Repeater {
            model: root.model.entries

            Item {
                id: entry

                required property string number
                required property string when
                required property string says

                width: root.columnWidth
                height: said.height + 14
                Accessible.role: Accessible.ListItem
                Accessible.name: qsTr("%1, %2: %3").arg(number).arg(when).arg(says)

                Small { width: 32; y: 4; text: entry.number; Accessible.ignored: true }
                Small { x: 40; y: 4; width: 140 * Theme.scale; text: entry.when; Accessible.ignored: true }
                Body {
                    id: said

                    x: 48 + 140 * Theme.scale
                    width: parent.width - x
                    text: entry.says
                    Accessible.ignored: true
                }
                HairLine {
                    y: parent.height - 6
                    width: parent.width
                }
            }
        }
    }
}
