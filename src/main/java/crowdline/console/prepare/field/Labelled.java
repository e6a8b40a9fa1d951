package crowdline.console.prepare.field;

import crowdline.console.theme.Appearance;
import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Fields in columns, each under its word. */
public final class Labelled {
    private Labelled() {}

    public static LayoutManager columns(Appearance worn, int across) {
        return new MigLayout("insets 0, gap " + worn.room(14) + " " + worn.room(6), "[0:0:,grow,fill]".repeat(across));
    }

    public static void add(
            JPanel into, Fields fields, Appearance worn, String[] words, JComponent[] inputs, int across) {
        for (int i = 0; i < inputs.length; i++) {
            JPanel cell = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 1", "[0:0:,grow,fill]"));
            cell.add(fields.over(inputs[i], words[i]), "wmin 0");
            cell.add(inputs[i], "wmin 0");
            boolean last = (i + 1) % across == 0 || i + 1 == inputs.length;
            into.add(cell, last ? "wmin 0, wrap" : "wmin 0");
        }
        fields.wear(worn);
    }
}
