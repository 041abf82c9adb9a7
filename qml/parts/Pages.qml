import QtQuick
import Oddglass.Ui

// The page that the router names. Loaded by its file: a Loader of Qt 6.4 cannot make a bound component.
FocusScope {
    id: root

    required property App app

    focus: true
    Component.onCompleted: show()

    Loader {
        id: loader

        anchors.fill: parent
        focus: true
        onLoaded: (item as FocusScope).forceActiveFocus()
    }
    Connections {
        target: root.app.router
        function onPageChanged() {
            root.show();
        }
    }

    function show() {
        const app = root.app;
        switch (app.router.page) {
        case Router.Today: return loader.setSource("TodayPage.qml", {model: app.today});
        case Router.Shelf: return loader.setSource("ShelfPage.qml", {model: app.shelf});
        case Router.Beverage: return loader.setSource("BeveragePage.qml", {model: app.beverage});
        case Router.Question: return loader.setSource("QuestionPage.qml", {model: app.draft});
        case Router.Takes: return loader.setSource("TakesPage.qml", {model: app.draft});
        case Router.GiveAways: return loader.setSource("GiveAwaysPage.qml", {model: app.draft, router: app.router});
        case Router.Care: return loader.setSource("CarePage.qml", {model: app.draft});
        case Router.Seal: return loader.setSource("SealPage.qml", {model: app.draft});
        case Router.PourSheet: return loader.setSource("PourSheetPage.qml", {model: app.pour});
        case Router.Alone: return loader.setSource("AlonePage.qml", {model: app.alone});
        case Router.Places: return loader.setSource("PlacesPage.qml", {model: app.board, router: app.router});
        case Router.HandOver: return loader.setSource("HandOverPage.qml", {model: app.seat});
        case Router.MyCups: return loader.setSource("MyCupsPage.qml", {model: app.cups});
        case Router.MySheet: return loader.setSource("MySheetPage.qml", {model: app.sheet});
        case Router.Locked: return loader.setSource("LockedPage.qml", {model: app.cups});
        case Router.OpenKey: return loader.setSource("OpenKeyPage.qml", {model: app.key, router: app.router});
        case Router.CameOut: return loader.setSource("CameOutPage.qml", {model: app.cameOut});
        case Router.History: return loader.setSource("HistoryPage.qml", {model: app.history});
        case Router.SideBySide: return loader.setSource("SideBySidePage.qml", {model: app.sideBySide});
        case Router.References: return loader.setSource("ReferencesPage.qml", {model: app.references});
        case Router.Room: return loader.setSource("RoomPage.qml", {model: app.room});
        case Router.OpenRound: return loader.setSource("OpenRoundPage.qml", {model: app.openRound});
        case Router.Card: return loader.setSource("CardPage.qml", {model: app.card});
        case Router.People: return loader.setSource("PeoplePage.qml", {model: app.people});
        case Router.Words: return loader.setSource("WordsPage.qml", {model: app.words});
        case Router.Word: return loader.setSource("WordPage.qml", {model: app.word});
        case Router.Paper: return loader.setSource("PaperPage.qml", {model: app.paper});
        case Router.TypeIn: return loader.setSource("TypeInPage.qml", {model: app.typeIn});
        case Router.OverTime: return loader.setSource("OverTimePage.qml", {model: app.overTime});
        case Router.BeginSeries: return loader.setSource("BeginSeriesPage.qml", {model: app.beginSeries});
        case Router.Keeping: return loader.setSource("KeepingPage.qml", {model: app.keeping, preferences: app.preferences});
        }
    }
}
