import QtQuick
import Oddglass.Ui

// Locked: thanks, and the device goes on.
PageFrame {
    id: root

    required property CupsModel model

    objectName: "lockedPage"
    over: model.sealMark
    headline: model.lockedHeadline
    lead: model.lockedLead
    primary: model.turnsOver ? qsTr("Turn the cups over") : model.more ? qsTr("My next round") : qsTr("Pass it on")
    onPrimaryRequested: model.turnsOver ? model.toCups() : model.more ? model.nextRound() : model.passOn()
    links: [
        LinkButton {
            objectName: "lockedPassOn"
            visible: root.model.more && !root.model.turnsOver
            text: qsTr("Pass it on first")
            onClicked: root.model.passOn()
        }
    ]
}
