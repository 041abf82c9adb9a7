pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Which words count as this one, and the other way round. Every merge can be taken apart again.
Column {
    id: root

    required property WordModel model

    spacing: 16
    visible: model.countsAs !== "" || model.merged.count > 0 || model.merging

    Column {
        width: parent.width
        visible: root.model.countsAs !== ""
        spacing: 4

        Body { objectName: "wordCountsAs"; width: parent.width; text: root.model.countsAs }
        Flow {
            width: parent.width
            spacing: 24

            LinkButton { objectName: "wordApart"; text: qsTr("Let it stand for itself again"); onClicked: root.model.takeApart() }
            LinkButton { objectName: "wordOther"; text: qsTr("Show that word"); onClicked: root.model.openOther() }
        }
    }
    Column {
        width: parent.width
        visible: root.model.merged.count > 0
        spacing: 4

        SectionTitle { width: parent.width; text: qsTr("These count as it") }
        Repeater {
            model: root.model.merged

            Flow {
                id: entry

                required property int index
                required property string name
                required property string line
                required property bool direct

                width: root.width
                spacing: 16

                Body {
                    width: Math.min(implicitWidth, parent.width)
                    height: Math.max(Theme.target, implicitHeight)
                    verticalAlignment: Text.AlignVCenter
                    text: entry.line === "" ? entry.name : qsTr("%1, %2").arg(entry.name).arg(entry.line)
                }
                LinkButton {
                    objectName: "wordTakeOut" + entry.index
                    visible: entry.direct
                    text: qsTr("Take it apart")
                    Accessible.name: qsTr("Take “%1” apart").arg(entry.name)
                    onClicked: root.model.takeOut(entry.index)
                }
            }
        }
    }
    Panel {
        width: parent.width
        visible: root.model.merging

        Field {
            objectName: "wordMergeFind"
            width: Math.min(parent.width, 420)
            label: qsTr("Which word does it count as from now on?")
            text: root.model.mergeWanted
            hint: qsTr("Old answers count along. You can take the two apart again.")
            error: root.model.wrongField === "into" ? root.model.wrong : ""
            onTyped: text => root.model.mergeWanted = text
        }
        Column {
            id: found

            width: parent.width

            Repeater {
                model: root.model.candidates

                RowLink {
                    required property int index
                    required property string name
                    required line

                    objectName: "wordCandidate" + index
                    width: found.width
                    text: name
                    onClicked: root.model.mergeInto(index)
                }
            }
        }
        LinkButton { objectName: "wordMergeLeave"; text: qsTr("Leave it as it is"); onClicked: root.model.merging = false }
    }
}
