package crowdline.console.glossary;

import crowdline.console.path.FlyingPicture;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.show.aircraft.Outline;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** A question of the drill: what flies, if something does, and under it what is asked. */
final class DrillPanel extends JPanel {
    private final FlyingPicture picture;
    private final DrillPage page;
    private final JTextField written = TextMenu.on(new JTextField());
    private transient SkyView watched = SkyView.NONE;

    /**
     * @param clockS seconds on a clock that never goes back
     * @param answered told what was written
     */
    DrillPanel(Appearance appearance, DoubleSupplier clockS, Consumer<String> answered) {
        super(new MigLayout("insets 0, gap 0, hidemode 3, flowy", "[0:0:,grow,fill]", ""));
        picture = new FlyingPicture(appearance, clockS);
        page = new DrillPage(appearance);
        getAccessibleContext().setAccessibleName("Drill");
        add(picture, "grow, pushy 100, wmin 0, h 0:0:");
        // Whoever has written goes on with Space, which must not be one more letter.
        setFocusable(true);
        written.getAccessibleContext().setAccessibleName("Its name");
        written.addActionListener(e -> answered.accept(written.getText()));
        // Over the page, under what it asks.
        add(written, "pos (asked.x+28) (asked.y+asked.h*0.26) (asked.x+asked.w*0.5) null");
        add(page, "id asked, grow, pushy 110, wmin 0, h 0:0:");
        written.setVisible(false);
        wear(appearance);
    }

    /** A question; what is to be watched in it flies at once. */
    void ask(Drill.View view) {
        SkyView sky = SkyView.whole(view.flown(), Outline.MONOPLANE);
        boolean other = !sky.equals(watched);
        picture.setVisible(!view.flown().isEmpty());
        picture.watch(sky);
        if (other) {
            watched = sky;
            picture.toggle();
        }
        page.show(view);
        boolean began = view.writes() && (other || !written.isVisible());
        boolean ended = !view.writes() && written.isFocusOwner();
        written.setVisible(view.writes());
        revalidate();
        if (began) {
            written.setText("");
            SwingUtilities.invokeLater(this::takeFocus);
        } else if (ended) {
            requestFocusInWindow();
        }
    }

    @Override
    public boolean isOptimizedDrawingEnabled() {
        return !written.isVisible();
    }

    /** Gives the keys to what is written; false if nothing is. */
    boolean takeFocus() {
        return written.isVisible() && written.requestFocusInWindow();
    }

    /** Flies it again, or stops it. */
    void fly() {
        picture.toggle();
    }

    boolean hasFlight() {
        return picture.isVisible() && picture.hasFlight();
    }

    void wear(Appearance appearance) {
        setBackground(appearance.palette().stage());
        // The page scales with the zoom alone, as the rest of this place does.
        written.setFont(appearance.plain(TextRole.VALUE));
        picture.wear(appearance, appearance.zoom().factor());
        page.wear(appearance, 1);
    }
}
