package crowdline.console.prepare.duty;

import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.edit.act.Edit;
import crowdline.edit.day.AskedDuties;
import crowdline.show.Act;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;

/** A choice of one of the acts of the show, or of none. */
final class ActChoice {
    private static final String NONE = "any";

    private final JComboBox<String> box;
    private final Function<Show, String> id;
    private final Tools tools;

    /** What choosing an act makes of the show; null for none. */
    interface Making {
        Edit of(@Nullable String actId);
    }

    /** @param id the id of the act that is chosen in a show, or empty */
    ActChoice(ShowForm form, Tools tools, String name, Function<Show, String> id, Making making) {
        this.id = id;
        this.tools = tools;
        box = form.choice(name, List.of(NONE), show -> name(show, id.apply(show)), chosen -> making.of(idOf(chosen)));
    }

    JComboBox<String> box() {
        return box;
    }

    /** Offers the acts of a show. */
    void know(Show show) {
        List<String> names = new ArrayList<>(List.of(NONE));
        show.acts().forEach(act -> names.add(AskedDuties.named(act)));
        String now = name(show, id.apply(show));
        if (!names.contains(now)) {
            names.add(now);
        }
        List<String> offered = new ArrayList<>();
        for (int i = 0; i < box.getItemCount(); i++) {
            offered.add(box.getItemAt(i));
        }
        if (!offered.equals(names)) {
            // Another model chooses its first entry, which nobody did.
            var heard = box.getActionListeners();
            for (var listener : heard) {
                box.removeActionListener(listener);
            }
            box.setModel(new DefaultComboBoxModel<>(names.toArray(String[]::new)));
            box.setSelectedItem(now);
            for (int i = heard.length - 1; i >= 0; i--) {
                box.addActionListener(heard[i]);
            }
        }
    }

    private static String name(Show show, String actId) {
        return actId.isEmpty() ? NONE : show.act(actId).map(AskedDuties::named).orElse(actId + ", not in the show");
    }

    private @Nullable String idOf(String chosen) {
        return tools.editor().now().acts().stream()
                .filter(act -> AskedDuties.named(act).equals(chosen))
                .map(Act::id)
                .findFirst()
                .orElse(null);
    }
}
