pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Hand over: one place. The first time, what must be asked before the first cup.
PageFrame {
    id: root

    required property SeatModel model

    objectName: "handOverPage"
    headline: model.headline
    lead: model.lead
    primary: model.iAm
    primaryReason: model.iAmReason
    onPrimaryRequested: model.sit()
    links: [
        LinkButton { objectName: "handOverLeave"; text: qsTr("Back to the places"); onClicked: root.model.leave() }
    ]

    Column {
        width: parent.width
        visible: root.model.firstTime
        spacing: 24

        ChoiceRow {
            objectName: "who"
            width: parent.width
            label: qsTr("Who is it?")
            options: root.model.names
            current: root.model.who
            onChosen: index => root.model.who = index
        }
        Field {
            objectName: "newName"
            width: Math.min(parent.width, 420)
            visible: root.model.who === root.model.names.length - 1
            label: qsTr("Name")
            text: root.model.newName
            error: root.model.wrongField === "name" ? root.model.wrong : ""
            onTyped: text => root.model.newName = text
        }
        Column {
            width: parent.width
            spacing: 8

            Repeater {
                model: root.model.care

                Body {
                    required property string modelData

                    width: root.columnWidth
                    text: modelData
                }
            }
        }
        Column {
            width: parent.width

            CheckLine { objectName: "ofAge"; width: parent.width; text: root.model.ofAgeWords; ticked: root.model.ofAge; onTickRequested: ticked => root.model.ofAge = ticked }
            CheckLine { objectName: "careHeard"; width: parent.width; text: root.model.careWords; ticked: root.model.careHeard; onTickRequested: ticked => root.model.careHeard = ticked }
            CheckLine { objectName: "consents"; width: parent.width; text: root.model.consentWords; ticked: root.model.consents; onTickRequested: ticked => root.model.consents = ticked }
        }
        Small {
            width: parent.width
            text: root.model.sitOut
        }
        ChoiceRow {
            objectName: "shownAs"
            width: parent.width
            label: qsTr("How do you want to be shown afterwards?")
            options: root.model.shownAsWords
            current: root.model.shownAs
            hint: root.model.fewFriends
            onChosen: index => root.model.shownAs = index
        }
        Field {
            objectName: "nickname"
            width: Math.min(parent.width, 420)
            visible: root.model.shownAs === 1
            label: qsTr("Nickname; leave it empty to keep the one you have")
            text: root.model.nickname
            error: root.model.wrongField === "nickname" ? root.model.wrong : ""
            onTyped: text => root.model.nickname = text
        }
        ChoiceRow {
            objectName: "heardAbout"
            width: parent.width
            visible: root.model.spare
            label: qsTr("You came later. Have you heard anything about the cups?")
            options: [qsTr("yes, something"), qsTr("no, nothing")]
            current: root.model.heardAbout
            onChosen: index => root.model.heardAbout = index
        }
    }
}
