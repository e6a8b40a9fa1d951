package crowdline.console;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandAction;
import crowdline.console.keys.CommandActions;
import crowdline.console.paint.PlainText;
import crowdline.console.place.Place;
import crowdline.show.bounds.Written;
import java.awt.Component;
import java.awt.Font;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.Box;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.jspecify.annotations.Nullable;

/** The menu bar, with the places as buttons at its right end. */
public final class ConsoleMenus {
    private static final int LONGEST_STEP = 60;

    private final JMenuBar bar = new FittingBar();
    private final Map<Place, JToggleButton> places = new EnumMap<>(Place.class);
    private final CommandActions actions;
    private final JMenuItem undo;
    private final JMenuItem redo;

    public ConsoleMenus(
            CommandActions actions,
            Action demo,
            Action messages,
            Supplier<List<Path>> recent,
            Consumer<Path> open,
            UnitsMenu units) {
        this.actions = actions;
        undo = item(Command.UNDO);
        redo = item(Command.REDO);
        JMenu file = menu("File", 'F');
        file.add(item(Command.NEW_SHOW));
        file.add(item(Command.OPEN));
        file.add(recent(recent, open));
        file.add(new JMenuItem(demo));
        file.addSeparator();
        file.add(item(Command.SAVE));
        file.add(item(Command.SAVE_AS));
        file.addSeparator();
        file.add(item(Command.PRINT));
        file.addSeparator();
        file.add(item(Command.QUIT));
        bar.add(file);
        JMenu edit = menu("Edit", 'E');
        edit.add(undo);
        edit.add(redo);
        edit.addSeparator();
        for (Command command : Command.values()) {
            if (command.scope() == Command.Scope.PREPARE && command != Command.METAR) {
                edit.add(item(command));
            }
        }
        bar.add(edit);
        JMenu show = menu("Show", 'S');
        show.add(item(Command.INTO_LIVE));
        show.add(item(Command.METAR));
        show.addSeparator();
        show.add(item(Command.PRACTICE_FLIGHT));
        show.addSeparator();
        show.add(item(Command.RECEIVER));
        show.add(item(Command.PEDALS));
        show.add(item(Command.LISTEN));
        show.add(item(Command.PACE));
        show.add(item(Command.NEXT_SPEAKER));
        bar.add(show);
        JMenu place = menu("Place", 'P');
        for (Place each : Place.values()) {
            place.add(item(each.command()));
        }
        place.addSeparator();
        place.add(item(Command.INCIDENT));
        bar.add(place);
        JMenu words = menu("Words", 'W');
        for (Command command : Command.values()) {
            if (command.scope() == Command.Scope.WORDS) {
                words.add(item(command));
            }
        }
        bar.add(words);
        JMenu live = menu("Live", 'L');
        for (Command command : Command.values()) {
            if (command.scope() == Command.Scope.LIVE
                    && command != Command.INCIDENT_IN_LIVE
                    && !command.isInRunningOrder()) {
                if (command == Command.SAID || command == Command.BY_HAND || command == Command.NEXT_ACT) {
                    live.addSeparator();
                }
                live.add(item(command));
            }
        }
        live.addSeparator();
        JMenu order = new JMenu("In the running order");
        for (Command command : Command.values()) {
            if (command.isInRunningOrder()) {
                order.add(item(command));
            }
        }
        live.add(order);
        bar.add(live);
        JMenu view = menu("View", 'V');
        view.add(item(Command.THEME));
        view.add(item(Command.LARGER));
        view.add(item(Command.SMALLER));
        view.addSeparator();
        view.add(units.speeds());
        view.add(units.heights());
        view.addSeparator();
        view.add(item(Command.FULL_SCREEN));
        view.addSeparator();
        view.add(item(Command.SECOND_WINDOW));
        view.add(item(Command.SECOND_FULL));
        view.add(item(Command.SECOND_THEME));
        view.add(item(Command.SECOND_SPEAKER));
        view.add(item(Command.SECOND_LARGER));
        view.add(item(Command.SECOND_SMALLER));
        bar.add(view);
        JMenu help = menu("Help", 'H');
        help.add(item(Command.EXPLAIN));
        help.add(item(Command.HELP));
        help.add(item(Command.TOUR));
        help.add(new JMenuItem(messages));
        bar.add(help);
        bar.add(Box.createHorizontalGlue());
        ButtonGroup group = new ButtonGroup();
        for (Place each : Place.values()) {
            JToggleButton button = new JToggleButton(actions.of(each.command()));
            button.setText(
                    each.command().label() + " " + actions.of(each.command()).keyInWords());
            button.setFocusable(false);
            button.putClientProperty("JButton.buttonType", "toolBarButton");
            button.setMargin(new Insets(2, 5, 2, 5));
            group.add(button);
            places.put(each, button);
            bar.add(button);
        }
    }

    public JMenuBar bar() {
        return bar;
    }

    /** Names the steps that can be taken back and made again; empty where there is none. */
    public void steps(Optional<String> back, Optional<String> again) {
        name(undo, Command.UNDO, back);
        name(redo, Command.REDO, again);
    }

    private void name(JMenuItem item, Command command, Optional<String> step) {
        String label = command.label()
                + step.map(s -> " " + Written.brief(s, LONGEST_STEP)).orElse("");
        item.setText(label + "   " + actions.of(command).keyInWords());
        item.getAccessibleContext().setAccessibleName(label);
    }

    public void chosen(Place place) {
        JToggleButton button = places.get(place);
        if (button != null) {
            button.setSelected(true);
        }
    }

    private static JMenu menu(String label, char mnemonic) {
        JMenu menu = new JMenu(label);
        menu.setMnemonic(mnemonic);
        return menu;
    }

    /** The key is part of the label: the dispatcher hears it, so an accelerator would give the command twice. */
    private JMenuItem item(Command command) {
        CommandAction action = actions.of(command);
        JMenuItem item = PlainText.plain(new JMenuItem(action));
        item.setText(command.label() + "   " + action.keyInWords());
        item.getAccessibleContext().setAccessibleName(command.label());
        return item;
    }

    private static JMenu recent(Supplier<List<Path>> recent, Consumer<Path> open) {
        JMenu menu = new JMenu("Open recent");
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                menu.removeAll();
                for (Action again : OpenAgain.of(recent, open)) {
                    JMenuItem item = PlainText.plain(new JMenuItem());
                    item.setAction(again);
                    menu.add(item);
                }
                if (menu.getItemCount() == 0) {
                    JMenuItem none = new JMenuItem("No show was opened yet");
                    none.setEnabled(false);
                    menu.add(none);
                }
            }

            @Override
            public void menuDeselected(MenuEvent event) {}

            @Override
            public void menuCanceled(MenuEvent event) {}
        });
        return menu;
    }

    /** A bar whose words, menus and places alike, shrink where the window has no room for them at this zoom. */
    private static final class FittingBar extends JMenuBar {
        private static final float LEAST_PX = 11;

        @Override
        public void doLayout() {
            Font font = UIManager.getFont("defaultFont");
            float size = font == null ? 0 : font.getSize2D();
            fit(font, size);
            while (size > LEAST_PX && getPreferredSize().width > getWidth()) {
                size = Math.max(LEAST_PX, size - 1);
                fit(font, size);
            }
            super.doLayout();
        }

        private void fit(@Nullable Font font, float sizePx) {
            for (Component child : getComponents()) {
                if (font != null
                        && (child instanceof JToggleButton || child instanceof JMenu)
                        && child.getFont().getSize2D() != sizePx) {
                    child.setFont(font.deriveFont(sizePx));
                }
            }
        }
    }
}
