package crowdline.app.command;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Nearest;
import crowdline.storage.file.ShowFileException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which acts of a show a command is about, and which variant of each: {@code --act} and {@code --variant}. */
final class ActChoice {
    @Option(names = "--act", paramLabel = "ID", description = "Only this act.")
    private @Nullable String actId;

    @Option(names = "--variant", paramLabel = "NAME", description = "Use this variant, not each act's first.")
    private @Nullable String variantName;

    /**
     * The acts chosen.
     *
     * @throws ShowFileException if the show has no such act, or none of them such a variant; with those there are
     */
    List<Act> of(Show show) throws ShowFileException {
        List<Act> acts = chosen(show);
        mustKnowVariant(acts);
        return acts;
    }

    /** Whether an act was named. */
    boolean named() {
        return actId != null;
    }

    /** The variant chosen; an act without it flies its first. */
    Variant variant(Act act) {
        return named(act).orElse(act.variants().get(0));
    }

    private List<Act> chosen(Show show) throws ShowFileException {
        String wanted = actId;
        if (wanted == null) {
            return show.acts();
        }
        Act act = show.act(wanted).orElse(null);
        if (act == null) {
            List<String> ids = show.acts().stream().map(Act::id).toList();
            throw new ShowFileException("there is no act " + wanted + " in this show; it has " + String.join(", ", ids)
                    + Nearest.hint(wanted, ids));
        }
        return List.of(act);
    }

    private Optional<Variant> named(Act act) {
        return Optional.ofNullable(variantName).flatMap(act::variant);
    }

    private void mustKnowVariant(List<Act> acts) throws ShowFileException {
        String wanted = variantName;
        if (wanted == null || acts.stream().anyMatch(act -> named(act).isPresent())) {
            return;
        }
        List<String> names = acts.stream()
                .flatMap(act -> act.variants().stream())
                .map(Variant::name)
                .distinct()
                .toList();
        String who = acts.size() == 1
                ? "act " + acts.get(0).id() + " has no variant " + wanted + "; it has "
                : "no act has a variant " + wanted + "; there are ";
        throw new ShowFileException(who + String.join(", ", names) + Nearest.hint(wanted, names));
    }
}
