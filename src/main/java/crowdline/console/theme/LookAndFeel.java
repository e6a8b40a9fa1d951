package crowdline.console.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Color;
import java.awt.Window;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.SwingUtilities;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.plaf.ColorUIResource;
import javax.swing.plaf.FontUIResource;

/** Dresses Swing's own components in a theme. */
public final class LookAndFeel {
    private LookAndFeel() {}

    /** Makes the console's type known to Java; before anything is painted. */
    public static void loadType() {
        // The faces the themes name; each of the others takes as long to load.
        for (String face :
                new String[] {FlatInterFont.STYLE_REGULAR, FlatInterFont.STYLE_SEMIBOLD, FlatInterFont.STYLE_BOLD}) {
            FlatInterFont.installStyle(face);
        }
    }

    /** Puts the theme and zoom on every component of a window there is, and on every component there will be. On the event thread. */
    public static void wear(Appearance appearance) {
        Palette palette = appearance.palette();
        Map<String, String> defaults = new HashMap<>();
        defaults.put("@background", hex(palette.ground()));
        defaults.put("@foreground", hex(palette.text()));
        defaults.put("@componentBackground", hex(palette.stage()));
        defaults.put("@accentColor", hex(palette.accent()));
        defaults.put("@selectionBackground", hex(palette.row()));
        defaults.put("@selectionForeground", hex(palette.onChosen()));
        // What the library takes instead can hardly be told from the rows beside it.
        defaults.put("@selectionInactiveBackground", hex(palette.rowAside()));
        defaults.put("@selectionInactiveForeground", hex(palette.onChosen()));
        defaults.put("@disabledForeground", hex(palette.soft()));
        for (String kind : new String[] {"ToggleButton.", "ToggleButton.toolbar."}) {
            defaults.put(kind + "selectedBackground", hex(palette.chosen()));
            defaults.put(kind + "selectedForeground", hex(palette.onChosen()));
            // The place one is in stays readable while nothing can be chosen, as on the incident page.
            defaults.put(kind + "disabledSelectedBackground", hex(palette.chosen()));
            defaults.put(kind + "disabledSelectedForeground", hex(palette.onChosen()));
        }
        FlatLaf.setGlobalExtraDefaults(defaults);
        if (appearance.theme().dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("defaultFont", new FontUIResource(appearance.plain(TextRole.BODY)));
        // Enter presses a button that has the keys, as Space does: nobody looks for the one key that does.
        UIManager.put("Button.focusInputMap", new UIDefaults.LazyInputMap(new Object[] {
            "SPACE", "pressed", "released SPACE", "released", "ENTER", "pressed", "released ENTER", "released"
        }));
        for (String line :
                List.of("Table.gridColor", "TableHeader.separatorColor", "TableHeader.bottomSeparatorColor")) {
            UIManager.put(line, new ColorUIResource(palette.rule()));
        }
        for (Window window : Window.getWindows()) {
            // Java keeps those that are gone for a while, with all that is in them.
            if (window.isDisplayable()) {
                SwingUtilities.updateComponentTreeUI(window);
            }
        }
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}
