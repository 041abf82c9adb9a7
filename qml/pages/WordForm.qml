pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// An own word: its name, class, drinks, how it is meant, and what it means here.
Column {
    id: root

    required property WordModel model

    spacing: 24

    Field {
        objectName: "wordName"
        width: Math.min(parent.width, 520)
        label: qsTr("The word")
        text: root.model.name
        error: root.model.wrongField === "word" ? root.model.wrong : ""
        onTyped: text => root.model.name = text
        onAccepted: root.model.save()
    }
    ChoiceRow {
        objectName: "wordClass"
        width: parent.width
        label: qsTr("Where you would look for it")
        options: root.model.classes
        current: root.model.wordClass
        onChosen: index => root.model.wordClass = index
    }
    ChoiceRow {
        objectName: "wordLeaning"
        width: parent.width
        label: qsTr("How it is usually meant")
        options: root.model.leanings
        current: root.model.leaning
        onChosen: index => root.model.leaning = index
    }
    Column {
        width: parent.width
        spacing: 4

        Small {
            width: parent.width
            text: root.model.wrongField === "drinks" ? root.model.wrong : qsTr("Said of")
            color: root.model.wrongField === "drinks" ? Theme.attention : Theme.muted
        }
        Flow {
            width: parent.width
            spacing: 16

            Repeater {
                model: root.model.drinks

                CheckLine {
                    required property int index
                    required property string name
                    required ticked

                    objectName: "wordDrink" + index
                    width: Math.min(root.width, 170 * Theme.scale)
                    text: name
                    onTickRequested: ticked => root.model.tickDrink(index, ticked)
                }
            }
        }
    }
    LongField {
        objectName: "wordMeaning"
        width: parent.width
        label: qsTr("What it means at this table; may stay empty")
        text: root.model.meaning
        error: root.model.wrongField === "meaning" ? root.model.wrong : ""
        onTyped: text => root.model.meaning = text
    }
}
