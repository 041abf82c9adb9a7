pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Filled paper sheets, typed in by keyboard: one line, Enter, the next line.
PageFrame {
    id: root

    required property TypingModel model

    objectName: "typeInPage"
    over: model.over
    headline: model.form.read ? qsTr("What do the columns hold?") : model.headline
    lead: model.form.read ? qsTr("Choose a column to say what it holds. All of the table is taken, or nothing of it.") : model.lead
    primary: model.form.read ? qsTr("Take all of these answers") : model.done ? qsTr("Lock this sheet") : model.typing ? qsTr("Next") : ""
    onPrimaryRequested: model.form.read ? model.form.take() : model.done ? model.lock() : model.enter()
    links: [
        LinkButton { objectName: "typeInBack"; visible: root.model.typing; text: qsTr("The line before"); onClicked: root.model.back() },
        LinkButton { objectName: "formLeave"; visible: root.model.form.read; text: qsTr("Another table, or none"); onClicked: root.model.form.forget() },
        LinkButton { objectName: "typeInLeave"; text: root.model.typing ? qsTr("Stop; nothing of it is kept") : qsTr("Back to the places"); quiet: true; onClicked: root.model.leave() }
    ]
    Component.onCompleted: model.load()

    Body {
        objectName: "typeInTold"
        width: parent.width
        visible: text !== ""
        text: root.model.told
        Accessible.role: Accessible.AlertMessage
    }
    ChoiceRow {
        objectName: "typist"
        width: parent.width
        visible: !root.model.typing && !root.model.form.read
        options: root.model.typists
        current: root.model.typist
        hint: root.model.notThese
        onChosen: index => root.model.pickTypist(index)
    }
    ChoiceRow {
        objectName: "typedPlace"
        width: parent.width
        visible: !root.model.typing && !root.model.form.read && root.model.typist >= 0 && root.model.places.length > 0
        label: qsTr("The sheet of")
        options: root.model.places
        onChosen: index => root.model.pickPlace(index)
    }
    FormPart {
        width: parent.width
        visible: !root.model.typing && root.model.typist >= 0 && root.model.places.length > 0
        form: root.model.form
    }
    Panel {
        width: parent.width
        visible: root.model.note !== ""
        alarming: true

        Body {
            width: parent.width
            text: root.model.note
            Accessible.role: Accessible.AlertMessage
        }
    }
    Field {
        id: line

        objectName: "typedLine"
        width: Math.min(parent.width, 420 * Theme.scale)
        visible: root.model.typing && !root.model.done
        label: root.model.headline
        text: root.model.line
        error: root.model.wrongField === "value" ? root.model.wrong : ""
        onVisibleChanged: if (visible) input.forceActiveFocus()
        onTyped: text => root.model.line = text
        onAccepted: root.model.enter()
    }
    LinkButton {
        objectName: "cannotRead"
        visible: root.model.asksACode
        text: qsTr("It cannot be read, or is no code of that place: keep it as written")
        quiet: true
        onClicked: root.model.cannotRead()
    }
    Column {
        width: parent.width
        spacing: 8
        visible: root.model.typing

        Repeater {
            model: root.model.typed

            Row {
                id: answer

                required property string label
                required property string says

                width: root.columnWidth
                spacing: 16

                Small { width: parent.width * 0.6; text: answer.label }
                Body { width: parent.width * 0.4 - 16; text: answer.says }
            }
        }
    }
}
