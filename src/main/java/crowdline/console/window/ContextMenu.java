package crowdline.console.window;

import crowdline.console.keys.Command;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** The menu that a right click on a row opens; the row is chosen first. */
public final class ContextMenu extends MouseAdapter {
    private final Consumer<Point> choosing;

    private ContextMenu(Consumer<Point> choosing) {
        this.choosing = choosing;
    }

    /**
     * Gives rows a menu of commands.
     *
     * @param choosing chooses the row at a point
     */
    public static void on(
            JComponent rows, Function<Command, Action> actions, List<Command> commands, Consumer<Point> choosing) {
        JPopupMenu menu = new JPopupMenu();
        for (Command command : commands) {
            JMenuItem item = new JMenuItem(actions.apply(command));
            item.setText(command.label() + "   " + command.key());
            menu.add(item);
        }
        rows.addMouseListener(new ContextMenu(choosing));
        rows.setComponentPopupMenu(menu);
    }

    /** Gives the rows of a list a menu of commands. */
    public static void on(JList<?> rows, Function<Command, Action> actions, List<Command> commands) {
        on(rows, actions, commands, at -> rows.setSelectedIndex(rows.locationToIndex(at)));
    }

    @Override
    public void mousePressed(MouseEvent event) {
        if (event.getButton() != MouseEvent.BUTTON1) {
            event.getComponent().requestFocusInWindow();
            choosing.accept(event.getPoint());
        }
    }
}
