pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// A word's own page: usual causes and what brewers usually do, as hints; what it is merged with; its form when it is one's own.
PageFrame {
    id: root

    required property WordModel model

    objectName: "wordPage"
    over: model.over
    headline: model.loaded ? model.headline : qsTr("No word is open")
    lead: model.loaded ? model.lead : qsTr("Choose one in the list.")
    primary: model.editing ? qsTr("Keep it") : qsTr("Back to the words")
    onPrimaryRequested: model.editing ? model.save() : model.toList()
    links: [
        LinkButton { objectName: "wordLeave"; visible: root.model.editing; text: qsTr("Leave it"); onClicked: root.model.leave() },
        LinkButton {
            objectName: "wordEdit"
            visible: root.model.own && !root.model.editing
            text: qsTr("Change it")
            onClicked: root.model.editing = true
        },
        LinkButton {
            objectName: "wordMerge"
            visible: root.model.loaded && !root.model.editing && !root.model.merging
            text: qsTr("Merge it into another word")
            onClicked: root.model.merging = true
        },
        LinkButton {
            objectName: "wordRetire"
            visible: root.model.loaded && !root.model.editing
            text: root.model.retired ? qsTr("Bring it back") : qsTr("Retire it")
            onClicked: root.model.retire(!root.model.retired)
        }
    ]

    WordForm {
        width: parent.width
        visible: root.model.editing
        model: root.model
    }
    Column {
        width: parent.width
        visible: root.model.loaded && !root.model.editing
        spacing: 24

        Body {
            width: parent.width
            visible: root.model.retired
            text: qsTr("Retired: it is no longer offered. What was answered with it stays.")
        }
        Panel {
            width: parent.width
            visible: root.model.caution !== ""
            alarming: true

            Body {
                objectName: "wordCaution"
                width: parent.width
                text: root.model.caution
            }
        }
        SideLine { width: parent.width; label: qsTr("Usual causes"); says: root.model.causes }
        SideLine { width: parent.width; label: qsTr("What brewers usually do"); says: root.model.deeds }
        Small {
            objectName: "wordSource"
            width: parent.width
            visible: text !== ""
            text: root.model.source
        }
        SideLine { width: parent.width; label: qsTr("What it means at this table"); says: root.model.own ? root.model.meaning : "" }
        SideLine { width: parent.width; label: qsTr("How it is meant"); says: root.model.meant }
        WordMergePart {
            width: parent.width
            model: root.model
        }
        Column {
            width: parent.width
            visible: root.model.changes.length > 0
            spacing: 4

            SectionTitle { width: parent.width; text: qsTr("Changes in the list") }
            Repeater {
                model: root.model.changes

                Small {
                    required property string modelData

                    width: root.columnWidth
                    text: modelData
                }
            }
        }
    }
}
