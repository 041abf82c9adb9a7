import QtQuick
import Oddglass.Ui

// Who hides what is in the cups, and who pours.
Column {
    id: root

    required property RoutineModel routine

    spacing: 28

    ChoiceRow {
        objectName: "routine"
        width: parent.width
        label: qsTr("Who hides what is in the cups?")
        options: root.routine.routines
        current: root.routine.routine
        hint: root.routine.line
        error: root.routine.wrong
        onChosen: index => root.routine.choose(index)
    }
    ChoiceRow {
        objectName: "pourer"
        width: parent.width
        visible: root.routine.asksPourer
        label: root.routine.byHand ? qsTr("Who throws the die and pours? They do not taste, and may have made it.") : qsTr("Who pours? Whoever pours sees the key: they do not taste, and made none of it. A driver makes a good pourer. Nobody there? Choose another way above.")
        options: root.routine.pourers
        current: root.routine.pourer
        onChosen: index => root.routine.choosePourer(index)
    }
    Field {
        objectName: "pourerName"
        width: Math.min(parent.width, 360)
        visible: root.routine.asksName
        label: qsTr("Who is it?")
        hint: qsTr("Forgotten after the seal.")
        text: root.routine.pourerName
        onTyped: text => root.routine.pourerName = text
    }
}
