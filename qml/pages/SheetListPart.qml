pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// The questions of a sheet, one below the other, to move, change and take away; and the form for one of them.
Column {
    id: root

    required property SheetPlanModel sheet

    spacing: 0

    Repeater {
        id: list

        model: root.sheet.asked

        AskedLine {
            objectName: "asked" + index
            width: root.width
            onMoveRequested: by => root.move(index, by)
            onChangeRequested: root.sheet.change(index)
            onRemoveRequested: root.take(index)
        }
    }
    LinkButton {
        id: add

        objectName: "askedAdd"
        visible: !root.sheet.isOpen
        text: qsTr("Add a question")
        onClicked: root.sheet.openNew()
    }
    Item {
        width: 1
        height: 20
        visible: root.sheet.isOpen
    }
    SheetItemForm {
        width: root.width
        visible: root.sheet.isOpen
        sheet: root.sheet
    }

    // The keyboard goes along with the question that moves.
    function move(index: int, by: int) {
        sheet.move(index, by);
        (list.itemAt(index + by) as AskedLine)?.holdMover(by);
    }

    // The question below comes up to where the keyboard is; at the end it is the one above.
    function take(index: int) {
        sheet.remove(index);
        const line = list.itemAt(Math.min(index, list.count - 1)) as AskedLine;
        if (line)
            line.holdRemover();
        else
            add.forceActiveFocus(Qt.TabFocusReason);
    }
}
