package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.PrepareView.ActView;
import crowdline.console.prepare.PrepareView.VariantView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The variants of an act, chosen by hand or by a cloud base; the buttons stand in a panel of their own above it. */
final class VariantBar extends JPanel {
    private final JLabel total = PlainText.plain(new JLabel());
    private final JLabel choice = PlainText.plain(new JLabel(" "));
    private final JTextField cloudBase = new JTextField(6);
    private final JPanel variants = new JPanel();
    private final transient Consumer<VariantView> chosen;
    private transient Appearance appearance;
    private transient @Nullable ActView act;
    private transient @Nullable VariantView variant;

    VariantBar(Appearance appearance, Consumer<VariantView> chosen) {
        this.appearance = appearance;
        this.chosen = chosen;
        cloudBase.getAccessibleContext().setAccessibleName("Cloud base in feet");
        cloudBase.addActionListener(e -> chooseByCloudBase());
        cloudBase.getDocument().addDocumentListener(new Changes(this::sayCloudBase));
    }

    /** The buttons of the variants, in a line of their own, or more. */
    JPanel buttons() {
        return variants;
    }

    void show(ActView next) {
        act = next;
        sayCloudBase();
    }

    void choose(VariantView next) {
        variant = next;
        total.setText(next.total());
        fill();
    }

    void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        setLayout(new MigLayout("insets 0, gap " + worn.room(10) + " 0", "[0:0:,grow,fill]"));
        total.setForeground(worn.palette().soft());
        choice.setForeground(worn.palette().soft());
        JLabel label = new JLabel("Cloud base, ft");
        label.setLabelFor(cloudBase);
        // So that the layout asks for its height again once it knows the width.
        variants.putClientProperty("migLayout.dynamicAspectRatio", true);
        add(label, "split 4, growx 0");
        add(cloudBase, "growx 0, w " + worn.room(80) + "!");
        add(choice, "wmin 0, growx");
        add(total, "wmin 0, growx 0");
        fill();
    }

    private void fill() {
        variants.removeAll();
        variants.setLayout(new InRows(appearance.px(4)));
        ButtonGroup group = new ButtonGroup();
        ActView shown = act;
        if (shown != null) {
            for (VariantView each : shown.variants()) {
                JToggleButton button = PlainText.plain(new JToggleButton(each.name() + ", " + each.base()));
                button.setFont(appearance.plain(TextRole.BODY));
                button.setSelected(each.equals(variant));
                button.addActionListener(e -> chosen.accept(each));
                group.add(button);
                button.setToolTipText(button.getText());
                variants.add(button);
            }
        }
        variants.revalidate();
        variants.repaint();
    }

    private void chooseByCloudBase() {
        ActView shown = act;
        OptionalDouble baseFt = CloudBase.read(cloudBase.getText());
        if (shown != null && baseFt.isPresent()) {
            shown.under(baseFt.getAsDouble()).ifPresent(chosen);
        } else {
            choice.setText(CloudBase.HOW);
        }
    }

    /** At every letter what the base means, as far as it is typed. */
    private void sayCloudBase() {
        ActView shown = act;
        choice.setText(shown == null ? " " : CloudBase.said(shown, cloudBase.getText()));
    }
}
