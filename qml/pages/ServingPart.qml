import QtQuick
import Oddglass.Ui

// How the drinks are served: for the record, so that the next evening can be laid the same way. Nothing has to be said.
Column {
    id: root

    required property ServingModel serving
    required property DraftModel model

    spacing: 12

    SectionTitle {
        width: parent.width
        text: qsTr("How it is served")
    }
    Small {
        width: parent.width
        text: qsTr("Alike for every cup. It goes on record, and the next evening can be laid the same way.")
    }
    Flow {
        width: parent.width
        spacing: 24

        Field {
            objectName: "vessel"
            width: Math.min(parent.width, 360)
            label: qsTr("Vessel, in a few words")
            text: root.serving.vessel
            error: root.model.wrongField === "vessel" ? root.model.wrong : ""
            onTyped: text => root.serving.vessel = text
        }
        Field {
            objectName: "servedAt"
            width: Math.min(parent.width, 260)
            label: qsTr("Temperature of the drinks (%1)").arg(root.serving.temperatureUnit)
            text: root.serving.temperature
            error: root.serving.temperatureWrong
            onTyped: text => root.serving.temperature = text
        }
    }
    ChoiceRow {
        objectName: "mouthful"
        width: parent.width
        label: qsTr("Every mouthful is")
        options: root.serving.mouthfuls
        current: root.serving.mouthful
        onChosen: index => root.serving.chooseMouthful(index)
    }
}
