pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The question: what the brewer wants to know, about which drinks, with whom, and what will be done in each outcome.
PageFrame {
    id: root

    required property DraftModel model

    objectName: "questionPage"
    headline: qsTr("What do you want to know?")
    lead: model.lastDecision !== "" ? model.lastDecision : qsTr("Say it in words; the next page says which test fits, and what it can and cannot show.")
    primary: qsTr("See what it takes")
    primaryReason: model.notYet
    onPrimaryRequested: model.toTakes()
    links: [
        DangerQuestion {
            objectName: "discard"
            width: Math.min(root.columnWidth, 520)
            link: qsTr("Throw this plan away")
            first: qsTr("Nothing of this plan has been poured. Throw it away?")
            second: qsTr("It cannot be brought back. Throw it away all the same?")
            deed: qsTr("Throw it away")
            onConfirmed: root.model.discard()
        }
    ]
    Component.onCompleted: model.load()

    ChoiceRow {
        objectName: "question"
        width: parent.width
        options: root.model.questions
        current: root.model.question
        onChosen: index => root.model.chooseQuestion(index)
    }
    Field {
        objectName: "attribute"
        width: Math.min(parent.width, 360)
        visible: root.model.namesThing
        label: root.model.knownDifference ? qsTr("What is there to notice? One tasting word, such as butter or mousy") : qsTr("More what? One thing in a word or two, such as bitter, sweet or sour")
        text: root.model.attribute
        error: root.model.wrongField === "attribute" ? root.model.wrong : ""
        onTyped: text => root.model.attribute = text
    }
    EmptyState {
        width: parent.width
        visible: !root.model.anyLots
        text: qsTr("A comparison needs a second drink. Add the bought one.")
    }
    LinkButton {
        objectName: "questionShelf"
        visible: !root.model.anyLots
        text: qsTr("To the shelf")
        onClicked: root.model.toShelf()
    }
    Column {
        width: parent.width
        visible: root.model.anyLots
        spacing: 4

        SectionTitle {
            width: parent.width
            text: root.model.lotsLabel
        }
        Repeater {
            model: root.model.lots

            CheckLine {
                required property int index
                required property string name
                required property string note
                required ticked

                objectName: "lot" + index
                width: root.columnWidth
                text: name
                more: note
                onTickRequested: root.model.tickLot(index)
            }
        }
    }
    Panel {
        width: parent.width
        visible: root.model.isThree
        spacing: 8

        SectionTitle {
            objectName: "threeHeadline"
            width: parent.width
            text: root.model.threeHeadline
        }
        Small {
            width: parent.width
            text: root.model.threeAdvice
        }
        Repeater {
            model: root.model.threeWays

            CheckLine {
                required property int index
                required property string says
                required property string price
                required property bool taken

                objectName: "threeWay" + index
                width: root.columnWidth - 48
                text: says
                more: price
                ticked: taken
                oneOfSeveral: true
                onTickRequested: root.model.chooseThreeWay(index)
            }
        }
    }
    SheetPart {
        objectName: "sheetPart"
        width: root.columnWidth
        visible: root.model.sheet.isSheet
        model: root.model
    }
    ChoiceRow {
        objectName: "expected"
        width: parent.width
        visible: root.model.namesThing && root.model.lotChoices.length === 2
        label: root.model.knownDifference ? qsTr("Which one is known to have more of it?") : qsTr("Of which one do you expect more? Only that direction is tested.")
        options: root.model.lotChoices
        current: root.model.expected
        onChosen: index => root.model.chooseExpected(index)
    }
    Field {
        objectName: "dose"
        width: Math.min(parent.width, 420)
        visible: root.model.knownDifference
        label: qsTr("What was done to it? Such as “half a drop a litre” or “one part water to nine”")
        hint: qsTr("May stay empty. What goes into a drink is an ingredient: only what is sold for food, no more than its label allows, and its allergens stand with the drink on the shelf.")
        text: root.model.dose
        error: root.model.wrongField === "dose" ? root.model.wrong : ""
        onTyped: text => root.model.dose = text
    }
    CheckLine {
        objectName: "mayHaveNone"
        width: root.columnWidth
        visible: root.model.asksLiking || root.model.alsoPrefer
        text: qsTr("“No preference” may be answered")
        more: qsTr("It is counted by itself and weakens what can be shown.")
        ticked: root.model.mayHaveNone
        onTickRequested: root.model.tickMayHaveNone()
    }
    Column {
        width: parent.width
        spacing: 4

        SectionTitle {
            width: parent.width
            text: qsTr("Who tastes?")
        }
        Small {
            width: parent.width
            visible: root.model.tasters.count === 0
            text: qsTr("Nobody here. You can also taste alone: add yourself under People.")
        }
        Repeater {
            model: root.model.tasters

            CheckLine {
                required property int index
                required property string name
                required property string note
                required ticked

                objectName: "taster" + index
                width: root.columnWidth
                text: name
                more: note
                onTickRequested: root.model.tickTaster(index)
            }
        }
        LinkButton {
            objectName: "questionPeople"
            text: qsTr("Add somebody")
            quiet: true
            onClicked: root.model.toPeople()
        }
    }
    RoutinePart {
        width: parent.width
        routine: root.model.routine
    }
    ChoiceRow {
        objectName: "sought"
        width: parent.width
        visible: root.model.mayBeAlike
        label: qsTr("What do you want to be able to say?")
        options: [qsTr("that there is a difference"), qsTr("that they are alike within a limit"), qsTr("either")]
        current: root.model.sought
        onChosen: index => root.model.chooseSought(index)
    }
    ChoiceRow {
        objectName: "limit"
        width: parent.width
        visible: root.model.mayBeAlike && root.model.sought > 0
        label: qsTr("Alike means: fewer of such people can tell than")
        options: root.model.limits
        current: root.model.limit
        error: root.model.wrongField === "limit_pm" ? root.model.wrong : ""
        onChosen: index => root.model.chooseLimit(index)
    }
    ChoiceRow {
        objectName: "alpha"
        width: parent.width
        label: root.model.sheet.isSheet ? qsTr("How often may chance alone be taken for a gap?") : root.model.question === 2 ? qsTr("How often may chance alone be taken for a preference?") : qsTr("How often may guessing alone be taken for a difference?")
        options: root.model.alphas
        current: root.model.alpha
        onChosen: index => root.model.chooseAlpha(index)
    }
    Column {
        width: parent.width
        spacing: 16

        SectionTitle {
            width: parent.width
            text: qsTr("What will you do with the answer?")
        }
        Field {
            objectName: "ifShown"
            width: parent.width
            label: root.model.outcomeLabels[0] ?? ""
            text: root.model.ifShown
            onTyped: text => root.model.ifShown = text
        }
        Field {
            objectName: "ifNotShown"
            width: parent.width
            label: root.model.outcomeLabels[1] ?? ""
            text: root.model.ifNotShown
            onTyped: text => root.model.ifNotShown = text
        }
        Field {
            objectName: "ifAlike"
            width: parent.width
            visible: root.model.sought > 0
            label: qsTr("If they are alike within your limit")
            text: root.model.ifAlike
            onTyped: text => root.model.ifAlike = text
        }
    }
    Flow {
        width: parent.width
        spacing: 24

        Field {
            objectName: "title"
            width: Math.min(parent.width, 400)
            label: qsTr("A title for yourself")
            text: root.model.title
            error: root.model.wrongField === "title" ? root.model.wrong : ""
            onTyped: text => root.model.title = text
        }
        Field {
            objectName: "guestTitle"
            width: Math.min(parent.width, 400)
            label: qsTr("A title for your guests")
            hint: qsTr("All that they are shown: it should not give anything away.")
            text: root.model.guestTitle
            error: root.model.wrongField === "guest_title" ? root.model.wrong : ""
            onTyped: text => root.model.guestTitle = text
        }
    }
}
