pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// A person's card: first the device is handed over, then it is theirs to read, and to say who else may see it.
PageFrame {
    id: root

    required property CardModel model

    objectName: "cardPage"
    headline: model.headline
    lead: model.lead
    primary: model.opened ? qsTr("Keep it to myself") : model.iAm
    onHeadlineChanged: toTop()
    onPrimaryRequested: model.opened ? model.keep() : model.read()
    links: [
        LinkButton { objectName: "cardLet"; visible: root.model.opened; text: qsTr("The brewer may see it, as it is today"); onClicked: root.model.letBeSeen() },
        LinkButton { objectName: "cardTakeBack"; visible: root.model.opened; text: qsTr("Have no card any more"); onClicked: root.model.takeBack() },
        LinkButton { objectName: "cardLeave"; visible: !root.model.opened; text: qsTr("Back to the people"); onClicked: root.model.keep() }
    ]

    ToldPart {
        width: parent.width
        visible: root.model.scores.length > 0
        heading: qsTr("How you use the scale")
        lines: root.model.scores
    }
    ToldPart {
        width: parent.width
        visible: root.model.noticed.length > 0
        heading: qsTr("What you have shown to notice")
        lines: root.model.noticed
    }
    Small { width: parent.width; visible: text !== ""; text: root.model.limits }
    Body { width: parent.width; visible: text !== ""; text: root.model.asked }
}
