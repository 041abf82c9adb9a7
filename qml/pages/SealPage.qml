pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The seal: the promise on one page, and afterwards the seal mark for everybody.
PageFrame {
    id: root

    required property DraftModel model
    readonly property bool done: model.sealMark !== ""

    objectName: "sealPage"
    headline: done ? model.sealMark : model.sealQuestion
    lead: done ? model.sealMarkLine : ""
    primary: done ? (model.routine.byHand ? qsTr("To the steps") : qsTr("To the pour sheet")) : qsTr("Seal")
    primaryReason: done ? "" : model.sealReason
    onPrimaryRequested: done ? model.toPour() : model.seal()
    links: [
        LinkButton {
            objectName: "sealGiveAways"
            visible: !root.done && !root.model.giveAways.settled
            text: qsTr("Go through the give-aways")
            onClicked: root.model.toGiveAways()
        },
        LinkButton {
            objectName: "sealPlaces"
            visible: root.done
            text: qsTr("To the places")
            onClicked: root.model.toPlaces()
        },
        LinkButton {
            objectName: "sealPaper"
            visible: root.done
            text: qsTr("Print")
            onClicked: root.model.toPaper()
        }
    ]
    Component.onCompleted: model.load()

    Body {
        width: parent.width
        visible: root.done
        text: root.model.afterSeal
    }
    Small {
        width: parent.width
        visible: root.done
        text: root.model.sealLimits
    }
    Column {
        width: parent.width
        visible: !root.done
        spacing: 10

        Repeater {
            model: root.model.sealRule

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    HairLine {
        width: parent.width
        visible: !root.done && root.model.sealPromises.length > 0
    }
    Column {
        width: parent.width
        visible: !root.done
        spacing: 10

        Repeater {
            model: root.model.sealPromises

            Body {
                required property string modelData

                width: root.columnWidth
                text: modelData
            }
        }
    }
    HairLine {
        width: parent.width
        visible: expectation.visible
    }
    NumberField {
        id: expectation

        objectName: "expectation"
        width: parent.width
        visible: !root.done && root.model.expectationAsked !== ""
        label: root.model.expectationAsked
        text: root.model.expectation
        unit: qsTr("in 100")
        hint: root.model.expectationHint
        error: root.model.wrongField === "expectation_pc" ? root.model.wrong : ""
        onTyped: text => root.model.typeExpectation(text)
        onStepRequested: by => root.model.stepExpectation(by)
    }
    Body {
        objectName: "expectationLine"
        width: parent.width
        visible: !root.done && text !== ""
        text: root.model.expectationLine
    }
    Body {
        width: parent.width
        visible: !root.done && text !== ""
        text: root.model.sealBinding
        color: Theme.muted
    }
}
