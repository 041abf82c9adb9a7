pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// A beverage's page: what it is, its lots and stock, its dated notes.
PageFrame {
    id: root

    required property BeverageModel model

    objectName: "beveragePage"
    over: model.isNew ? qsTr("Put on the shelf") : ""
    headline: model.headline
    lead: model.lead
    primary: model.editing ? qsTr("Keep it") : qsTr("Add a note")
    onPrimaryRequested: model.editing ? model.save() : model.saveNote()
    links: [
        LinkButton {
            objectName: "beverageEdit"
            visible: !root.model.isNew && !root.model.editing
            text: qsTr("Change what is said above")
            onClicked: root.model.editing = true
        },
        LinkButton {
            objectName: "beverageBeside"
            visible: !root.model.isNew && !root.model.editing && root.model.origin === 0
            text: qsTr("Set it beside its recipe's other batches")
            onClicked: root.model.setBeside()
        },
        LinkButton {
            objectName: "beverageArchive"
            visible: !root.model.isNew
            text: root.model.archived ? qsTr("Put it back on the shelf") : qsTr("Put it away")
            onClicked: root.model.archive(!root.model.archived)
        }
    ]

    BeverageForm {
        width: parent.width
        visible: root.model.editing
        model: root.model
    }
    LotsPart {
        width: parent.width
        visible: !root.model.isNew && !root.model.editing
        model: root.model
    }
    TooEarlyPart {
        width: parent.width
        visible: root.model.earlyHeadline !== "" && !root.model.isNew && !root.model.editing
        model: root.model
    }
    NotesPart {
        width: parent.width
        visible: !root.model.isNew && !root.model.editing
        model: root.model
    }
}
