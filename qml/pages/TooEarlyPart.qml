pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Too early? What the readings and the bottles of a batch say, with the cautions that go with pressure.
Column {
    id: root

    required property BeverageModel model

    spacing: 10

    SectionTitle {
        width: parent.width
        text: qsTr("Too early?")
    }
    Lead {
        objectName: "earlyHeadline"
        width: parent.width
        text: root.model.earlyHeadline
        color: root.model.earlyUrgent ? Theme.attention : Theme.ink
    }
    Repeater {
        model: root.model.earlyLines

        Body {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
    Repeater {
        model: root.model.earlyCautions

        Small {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
}
