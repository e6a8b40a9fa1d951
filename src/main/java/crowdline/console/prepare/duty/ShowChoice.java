package crowdline.console.prepare.duty;

import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.edit.act.Edit;
import crowdline.edit.day.AskedDuties;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;

/** A choice of something of the show, such as one of its acts, or of none. */
final class ShowChoice {
    private final JComboBox<String> box;
    private final String none;
    private final Function<Show, String> id;
    private final Function<Show, List<Option>> options;
    private final Tools tools;

    /** What choosing something makes of the show; null for none. */
    interface Making {
        Edit of(@Nullable String id);
    }

    /** Something that can be chosen. */
    private record Option(String id, String name) {}

    private ShowChoice(
            ShowForm form,
            Tools tools,
            String name,
            String none,
            Function<Show, List<Option>> options,
            Function<Show, String> id,
            Making making) {
        this.none = none;
        this.options = options;
        this.id = id;
        this.tools = tools;
        box = form.choice(name, List.of(none), show -> name(show, id.apply(show)), chosen -> making.of(idOf(chosen)));
    }

    /** @param id the id of the act that is chosen in a show, or empty */
    static ShowChoice ofActs(ShowForm form, Tools tools, String name, Function<Show, String> id, Making making) {
        return new ShowChoice(
                form,
                tools,
                name,
                "any",
                show -> show.acts().stream()
                        .map(act -> new Option(act.id(), AskedDuties.named(act)))
                        .toList(),
                id,
                making);
    }

    /** @param name the name of the speaker who is chosen in a show, or empty */
    static ShowChoice ofSpeakers(
            ShowForm form, Tools tools, String name, Function<Show, String> chosen, Making making) {
        return new ShowChoice(
                form,
                tools,
                name,
                "whoever is at the console",
                show -> show.speakers().all().stream()
                        .map(speaker -> new Option(speaker.name(), noted(tools, speaker, show.speakers())))
                        .toList(),
                chosen,
                making);
    }

    private static String noted(Tools tools, Speaker speaker, Speakers all) {
        String note = tools.host().get().noteOn(speaker, all);
        return note.isEmpty() ? speaker.name() : speaker.name() + ": " + note;
    }

    JComboBox<String> box() {
        return box;
    }

    /** Offers what a show has. */
    void know(Show show) {
        List<String> names = new ArrayList<>(List.of(none));
        options.apply(show).forEach(option -> names.add(option.name()));
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

    private String name(Show show, String chosen) {
        return chosen.isEmpty()
                ? none
                : options.apply(show).stream()
                        .filter(option -> option.id().equals(chosen))
                        .map(Option::name)
                        .findFirst()
                        .orElse(chosen + ", not in the show");
    }

    private @Nullable String idOf(String chosen) {
        return options.apply(tools.editor().now()).stream()
                .filter(option -> option.name().equals(chosen))
                .map(Option::id)
                .findFirst()
                .orElse(null);
    }
}
