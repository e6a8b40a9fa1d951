package crowdline.app.window;

import crowdline.show.Act;
import crowdline.show.figure.Figure;
import java.util.List;

/** Acts made in Prepare as a hand makes them. */
final class ActsByKeys {
    private ActsByKeys() {}

    /** Of a solo from a list, a formation and a glider, each an act. */
    static void threeActs(ConsoleOnScreen screen) throws Exception {
        list(screen, "run in from the left, loop at 800 ft, stall turn right end, slow roll, 2 turn spin", "light");
        made(screen, 1);
        list(screen, "", "formation");
        made(screen, 2);
        list(screen, "", "aerobatic glider");
        made(screen, 3);
    }

    /** Adds a figure that flies upside down to the last act. */
    static void invertedPass(ConsoleOnScreen screen) throws Exception {
        screen.await("it is shown", () -> screen.stands("aerobatic glider"));
        screen.await("the figures have the focus", () -> screen.focusIs("Figures in the order flown"));
        screen.give("ctrl 1");
        screen.await("the acts have the focus", () -> screen.focusIs("Acts in running order"));
        screen.give("RIGHT");
        screen.await("the figures have the focus", () -> screen.focusIs("Figures in the order flown"));
        screen.give("INSERT");
        screen.await("a figure is asked for", () -> screen.focusIs("Which figure"));
        screen.type("upside down");
        screen.give("ENTER");
        screen.await("it is flown", () -> flown(screen.edited().acts().get(2)).contains("inverted pass"));
    }

    static void list(ConsoleOnScreen screen, String list, String kind) throws Exception {
        screen.give("ctrl I");
        screen.await("a list is asked for", () -> screen.focusIs("The pilot's list"));
        screen.type(list);
        screen.give("TAB");
        screen.give("TAB");
        screen.await("the kind is asked for", () -> screen.focusIs("Kind of aircraft"));
        for (int i = 0; i < kind.length(); i++) {
            char letter = kind.charAt(i);
            screen.give(letter == ' ' ? "SPACE" : String.valueOf(Character.toUpperCase(letter)));
        }
        screen.await("the act can be made", () -> screen.canPress("Make the act"));
        screen.give("ctrl ENTER");
    }

    static void made(ConsoleOnScreen screen, int acts) throws Exception {
        screen.await("act " + acts + " is made", () -> screen.acts() == acts);
        screen.await("its figures have the keys", () -> screen.focusIs("Figures in the order flown"));
    }

    static List<String> flown(Act act) {
        return act.inOrder(act.variants().get(0)).stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }
}
