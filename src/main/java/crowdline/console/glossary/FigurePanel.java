package crowdline.console.glossary;

import crowdline.console.keys.Command;
import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.path.ActPainter;
import crowdline.console.path.FlyingPicture;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.SideView;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Flown;
import java.awt.Color;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A figure as the crowd sees it, flown by any kind of aircraft; under it its path from the side and from above. */
final class FigurePanel extends JPanel {
    private static final String ALONE =
            "Pale is the top, dark the underside. Where the band twists, it rolls. Drawn larger than it looks.";
    private static final String TOGETHER =
            "Pale is the top, dark the underside. Drawn larger than they look, and the gaps between them with them.";
    private static final String SKETCHED =
            "Sketched after its description, not computed: it shows what happens, and nothing can be measured in it.";

    private final transient GlossaryHost host;
    private final FlyingPicture picture;
    private final Paths paths;
    private final JTextArea legend = PlainText.wrapped("How to read it", ALONE);
    private final JTextArea lack = PlainText.wrapped("Why it is not flown", "");
    private final JButton fly = button(Command.FLY, () -> toggle());
    private final JButton before = button(Command.MOMENT_BEFORE, () -> step(false));
    private final JButton next = button(Command.NEXT_MOMENT, () -> step(true));
    private final JButton slower = button(Command.FLY_SLOWER, () -> change(-1));
    private final JButton faster = button(Command.FLY_FASTER, () -> change(1));
    private final JButton flownBy = button(Command.FLOWN_BY, () -> nextKind());
    /** What other kinds made of the figures, by both their names. */
    private final transient Map<List<String>, FigureAlone.Outcome> outcomes = new HashMap<>();

    private int kind;
    private transient @Nullable CatalogueEntry figure;
    private transient Flown usual = Flown.NONE;

    /** @param clockS seconds on a clock that never goes back */
    FigurePanel(Appearance appearance, GlossaryHost host, DoubleSupplier clockS) {
        this.host = host;
        picture = new FlyingPicture(appearance, clockS);
        picture.onMove(this::told);
        paths = new Paths(appearance);
        getAccessibleContext().setAccessibleName("The figure in the air");
        wear(appearance);
    }

    private static JButton button(Command command, Runnable action) {
        JButton button = PlainText.plain(new JButton());
        button.setFocusable(false);
        button.setText(command.label() + " (" + command.key() + ")");
        button.setToolTipText(command.help());
        button.addActionListener(e -> action.run());
        return button;
    }

    /**
     * Shows a figure; it is there whole.
     *
     * @param flown as the first kind flies it
     */
    void show(CatalogueEntry shown, Flown flown) {
        if (!shown.equals(figure) || !flown.equals(usual)) {
            figure = shown;
            usual = flown;
            fill();
        }
    }

    private void fill() {
        CatalogueEntry shown = figure;
        if (shown == null) {
            return;
        }
        Kind flying = kind();
        if (kind == 0 || flying == null) {
            show(new FigureAlone.Outcome(usual, ""));
            return;
        }
        List<String> key = List.of(shown.name(), flying.name());
        FigureAlone.Outcome known = outcomes.get(key);
        if (known != null) {
            show(known);
            return;
        }
        show(new FigureAlone.Outcome(Flown.NONE, "The " + flying.name() + " is flying it…"));
        host.fly(shown, flying, outcome -> {
            outcomes.put(key, outcome);
            if (flying.equals(kind()) && shown.equals(figure)) {
                show(outcome);
            }
        });
    }

    private void show(FigureAlone.Outcome outcome) {
        Kind flying = kind();
        Outline outline = flying == null || flying.outline() == null ? Outline.MONOPLANE : flying.outline();
        lack.setText(outcome.lack());
        lack.setVisible(!outcome.lack().isEmpty());
        picture.watch(SkyView.whole(outcome.flown(), outline));
        told();
    }

    private @Nullable Kind kind() {
        List<Kind> kinds = host.kinds();
        return kind < kinds.size() ? kinds.get(kind) : null;
    }

    boolean hasFlight() {
        return isVisible() && picture.hasFlight();
    }

    boolean hasKinds() {
        return isVisible() && host.kinds().size() > 1 && isAnyAeroplanes();
    }

    /** Whether it makes a difference what flies it: nothing but a helicopter hovers. */
    private boolean isAnyAeroplanes() {
        return usual.company().outline().isEmpty();
    }

    void toggle() {
        picture.toggle();
    }

    void step(boolean on) {
        picture.step(on);
    }

    void change(int steps) {
        picture.change(steps);
    }

    /** Flown by the next kind of aircraft. */
    void nextKind() {
        if (hasKinds()) {
            kind = (kind + 1) % host.kinds().size();
            fill();
        }
    }

    private void told() {
        Kind flying = kind();
        fly.setText((picture.isPlaying() ? "Stop" : "Fly it") + " (" + Command.FLY.key() + ")");
        faster.setText(Command.FLY_FASTER.label() + ", now " + picture.speed() + " (" + Command.FLY_FASTER.key() + ")");
        flownBy.setText((flying == null ? "strong monoplane" : flying.name()) + " (" + Command.FLOWN_BY.key() + ")");
        flownBy.setVisible(flying != null && isAnyAeroplanes());
        SkyView shown = picture.shown();
        if (shown != null) {
            Flown flown = shown.flown();
            SideView path = SideView.of(flown, shown.atS());
            legend.setText(
                    flown.company().sketched() ? SKETCHED : flown.company().equals(Company.NONE) ? ALONE : TOGETHER);
            paths.show(path);
            // Along the display line it is what the crowd sees, and from above it is that line.
            paths.setVisible(path.hasDepth() && flown.company().equals(Company.NONE));
        }
    }

    void wear(Appearance appearance) {
        // Where letters are that large there is room for the picture and little else; the keys go on.
        boolean large = appearance.zoom().percent() > 140;
        removeAll();
        setBackground(appearance.palette().stage());
        setLayout(new MigLayout(
                "insets 0, hidemode 3, flowy, gap " + appearance.room(8) + " " + appearance.room(6),
                "[0:0:,grow,fill]",
                ""));
        picture.wear(appearance, appearance.zoom().factor());
        paths.wear(appearance, appearance.zoom().factor());
        lack.setFont(appearance.plain(TextRole.SMALL));
        lack.setForeground(appearance.palette().text());
        add(picture, "grow, pushy, wmin 0, h 0:0:");
        add(lack, "growx, wmin 0");
        legend.setFont(appearance.plain(TextRole.LABEL));
        legend.setForeground(appearance.palette().soft());
        if (!large) {
            add(legend, "growx, wmin 0");
        }
        add(row(appearance, large ? List.of(fly) : List.of(fly, before, next, slower, faster), flownBy));
        if (!large) {
            add(paths, "growx, wmin 0, h 34%!");
        }
        revalidate();
        repaint();
    }

    /** Buttons beside each other, and under them one whose words need the whole width. */
    private static JPanel row(Appearance appearance, List<JButton> buttons, JButton wide) {
        JPanel row = new JPanel(new MigLayout(
                "insets 0, hidemode 3, wrap 2, gap " + appearance.room(8) + " " + appearance.room(6),
                "[0:0:,grow,fill][0:0:,grow,fill]"));
        row.setOpaque(false);
        for (JButton button : buttons) {
            button.setFont(appearance.plain(TextRole.BODY));
            // The first has its row to itself, so that the others stand in pairs.
            row.add(button, button == buttons.get(0) ? "span 2, wmin 0" : "wmin 0");
        }
        wide.setFont(appearance.plain(TextRole.BODY));
        row.add(wide, "span 2, wmin 0");
        return row;
    }

    /** The path from the side and from above. */
    private static final class Paths extends Painted<SideView> {
        Paths(Appearance appearance) {
            super("The path from the side and from above", appearance);
        }

        @Override
        protected Color ground(Appearance worn) {
            return worn.palette().stage();
        }

        @Override
        protected String spoken(SideView shown) {
            return "The path of the figure from the side and from above";
        }

        @Override
        protected void paint(Pen pen, SideView shown, Box box) {
            ActPainter.whole(pen, shown, box);
        }
    }
}
