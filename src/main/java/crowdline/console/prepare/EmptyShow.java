package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What stands where a show would be: what to do, and the two ways to do it. */
public final class EmptyShow extends JPanel {
    private static final String[] STEPS = {
        "1   Open a show file, or drop one on this window. The demo show is a good place to look around.",
        "2   Read the findings at the left: they say what is missing, and on which line.",
        "3   Go through the figures. Under each stand its remarks, with the seconds they take and the seconds there are.",
        "4   On the day press F5 for Live. F1 shows the keys, in every place.",
    };

    private final transient Action open;
    private final transient Action demo;

    public EmptyShow(Appearance appearance, Action open, Action demo) {
        this.open = open;
        this.demo = demo;
        wear(appearance);
    }

    public void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout(
                "insets " + appearance.room(40) + ", align center center",
                "[60px:" + appearance.room(760) + ":" + appearance.room(860) + ",fill]"));
        JLabel title = new JLabel("No show is open");
        title.setFont(appearance.strong(TextRole.NEXT));
        add(title, "wmin 0, wrap " + appearance.room(18));
        for (String step : STEPS) {
            JTextArea line = PlainText.wrapped("Step", step);
            line.setFont(appearance.plain(TextRole.SMALL));
            line.setForeground(appearance.palette().text());
            line.setFocusable(false);
            add(line, "wmin 0, growx, wrap " + appearance.room(8));
        }
        JButton openButton = new JButton(open);
        openButton.setFont(appearance.strong(TextRole.SMALL));
        openButton.putClientProperty("JButton.buttonType", "default");
        JButton demoButton = new JButton(demo);
        demoButton.setFont(appearance.plain(TextRole.SMALL));
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap " + appearance.room(10) + " 0px"));
        buttons.setOpaque(false);
        buttons.add(openButton);
        buttons.add(demoButton);
        add(buttons, "gaptop " + appearance.room(14));
        revalidate();
        repaint();
    }
}
