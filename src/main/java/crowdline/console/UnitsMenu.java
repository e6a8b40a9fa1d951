package crowdline.console;

import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** What the commentator reads speeds and heights in, each chosen in a menu of its own. */
public final class UnitsMenu {
    private final Supplier<Measures> now;
    private final Consumer<Measures> chosen;

    /**
     * Two menus.
     *
     * @param now what they are read in now
     * @param chosen told what they are to be read in
     */
    public UnitsMenu(Supplier<Measures> now, Consumer<Measures> chosen) {
        this.now = now;
        this.chosen = chosen;
    }

    JMenu speeds() {
        return menu(
                "Speeds in",
                'P',
                Arrays.asList(SpeedUnit.values()),
                SpeedUnit::words,
                unit -> now.get().speeds() == unit,
                unit -> chosen.accept(now.get().with(unit)));
    }

    JMenu heights() {
        return menu(
                "Heights in",
                'H',
                Arrays.asList(LengthUnit.values()),
                LengthUnit::words,
                unit -> now.get().heights() == unit,
                unit -> chosen.accept(now.get().with(unit)));
    }

    private static <U> JMenu menu(
            String label,
            char mnemonic,
            List<U> units,
            Function<U, String> words,
            Predicate<U> isNow,
            Consumer<U> choose) {
        JMenu menu = new JMenu(label);
        menu.setMnemonic(mnemonic);
        ButtonGroup group = new ButtonGroup();
        for (U unit : units) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(words.apply(unit));
            item.addActionListener(e -> choose.accept(unit));
            group.add(item);
            menu.add(item);
            menu.addMenuListener(new Opened(() -> item.setSelected(isNow.test(unit))));
        }
        return menu;
    }

    private record Opened(Runnable told) implements MenuListener {
        @Override
        public void menuSelected(MenuEvent event) {
            told.run();
        }

        @Override
        public void menuDeselected(MenuEvent event) {}

        @Override
        public void menuCanceled(MenuEvent event) {}
    }
}
