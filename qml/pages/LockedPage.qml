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
    primary: model.more ? qsTr("My next round") : qsTr("Pass it on")
    onPrimaryRequested: model.more ? model.nextRound() : model.passOn()
    links: [
        LinkButton {
            objectName: "lockedPassOn"
            visible: root.model.more
            text: qsTr("Pass it on first")
            onClicked: root.model.passOn()
        }
    ]
}
