package crowdline.console.prepare.aircraft;

import crowdline.console.prepare.field.Fields;
import crowdline.console.theme.Appearance;
import crowdline.show.aircraft.Sliders;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;

/** Three sliders that move an aircraft from what is typical of its kind. */
final class SliderRow extends JPanel {
    private static final int FULL = 100;

    private final Fields fields = new Fields();
    private final JSlider heavier;
    private final JSlider stronger;
    private final JSlider rolls;
    private final transient Consumer<Sliders> told;
    private boolean showing;

    SliderRow(Consumer<Sliders> told) {
        this.told = told;
        heavier = slider("Lighter or heavier than is typical");
        stronger = slider("Weaker or stronger than is typical");
        rolls = slider("Rolls slower or faster than is typical");
    }

    private JSlider slider(String name) {
        JSlider slider = fields.named(new JSlider(-FULL, FULL, 0), name);
        slider.setMajorTickSpacing(FULL);
        slider.setMinorTickSpacing(FULL / 4);
        slider.setPaintTicks(true);
        slider.addChangeListener(e -> {
            if (!showing && !slider.getValueIsAdjusting()) {
                told.accept(new Sliders(part(heavier), part(stronger), part(rolls)));
            }
        });
        return slider;
    }

    private static double part(JSlider slider) {
        return slider.getValue() / (double) FULL;
    }

    /**
     * Shows how far an aircraft is from what is typical.
     *
     * @param engine whether there is an engine to be weaker or stronger
     */
    public void show(Sliders now, boolean engine) {
        stronger.setEnabled(engine);
        stronger.setToolTipText(engine ? null : "It has no engine");
        showing = true;
        try {
            heavier.setValue((int) Math.round(now.heavier() * FULL));
            stronger.setValue((int) Math.round(now.stronger() * FULL));
            rolls.setValue((int) Math.round(now.rollsFaster() * FULL));
        } finally {
            showing = false;
        }
    }

    public void wear(Appearance worn) {
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(14) + " 0, wrap 3", "[0:0:,grow,fill][0:0:,grow,fill][0:0:,grow,fill]"));
        List<JSlider> all = List.of(heavier, stronger, rolls);
        String[] words = {"lighter – heavier", "weaker – stronger", "rolls slower – faster"};
        for (int i = 0; i < words.length; i++) {
            add(fields.over(all.get(i), words[i]), "wmin 0");
        }
        all.forEach(slider -> add(slider, "wmin 0"));
        fields.wear(worn);
    }
}
