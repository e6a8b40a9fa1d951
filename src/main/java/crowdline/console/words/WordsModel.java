package crowdline.console.words;

import crowdline.console.edit.Editing;
import crowdline.edit.Change;
import crowdline.edit.Touched;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.speech.plain.SpeechFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The words of the edited show being written: what is chosen, and what was typed. It knows no window and belongs to one thread. */
public final class WordsModel {
    /** What a remark says before anybody wrote it. */
    static final String NEW_TEXT = "New remark";

    private final WordsPresenter presenter;
    private final Editing editing;
    /** The show as it was when it was last looked at here. */
    private Show seen;

    private RemarkPlace place = RemarkPlace.SHOW;
    private int at;
    private @Nullable RemarkDraft draft;
    private WordsPlan plan = WordsPlan.NONE;
    private final FactList facts = new FactList();
    private String refused = "";

    /** @param editing where a show is open */
    public WordsModel(Editing editing, WordsBasis basis) {
        this.editing = editing;
        presenter = new WordsPresenter(basis);
        seen = editing.now();
        choose(0);
    }

    /** The show as edited. */
    public Show show() {
        return editing.now();
    }

    public WordsView view() {
        Remark chosen = chosen();
        RemarkDraft typed = draft;
        Optional<WordsView.RemarkPage> page = chosen == null || typed == null
                ? Optional.empty()
                : Optional.of(presenter.page(show(), chosen, place, typed, problems(typed, chosen), plan));
        return new WordsView(
                presenter.places(show()),
                RemarkPlace.all(show()).indexOf(place),
                presenter.rows(show(), place, plan),
                chosen == null ? -1 : at,
                page,
                (int) show().everyRemarkOf(place.actId()).filter(Remark::draft).count(),
                facts.view(show(), place, remark -> presenter.brief(remark, place, plan)));
    }

    private List<String> problems(RemarkDraft typed, Remark chosen) {
        List<String> problems = new ArrayList<>(typed.read(chosen).problems());
        if (!refused.isEmpty()) {
            problems.add(refused);
        }
        return problems;
    }

    /** Goes to a place, by its number in the view. */
    public void choosePlace(int number) {
        List<RemarkPlace> places = RemarkPlace.all(show());
        if (number >= 0 && number < places.size() && !places.get(number).equals(place)) {
            place = places.get(number);
            choose(0);
            facts.choose(0);
        }
    }

    /** Goes to a figure or act, as when another place asks for it; null figure for the act, null act for the show. */
    public void choosePlace(@Nullable String actId, @Nullable String figureId) {
        choosePlace(RemarkPlace.all(show()).indexOf(new RemarkPlace(actId, figureId)));
    }

    RemarkPlace chosenPlace() {
        return place;
    }

    /** Goes to a remark of the place, by its number. */
    public void choose(int number) {
        refused = "";
        at = Math.max(0, Math.min(number, remarks().size() - 1));
        Remark chosen = chosen();
        draft = chosen == null ? null : RemarkDraft.of(chosen);
    }

    /** Takes what was typed; what cannot be used stays in the draft and changes nothing. */
    public void type(RemarkDraft typed) {
        Remark before = chosen();
        RemarkDraft last = draft;
        if (before == null || last == null || typed.equals(last)) {
            return;
        }
        draft = typed;
        List<Remark> remarks = new ArrayList<>(remarks());
        remarks.set(at, typed.read(before).remark());
        change("Edit a remark", remarks, typed.step(before.id(), last));
    }

    /** Adds a remark after the chosen one: a call where a figure has none yet, an explanation in a figure, else a fact. */
    public void add() {
        List<Remark> remarks = new ArrayList<>(remarks());
        RemarkKind kind = place.kindOfNew(show());
        int where = remarks.isEmpty() ? 0 : kind == RemarkKind.CALL ? 0 : at + 1;
        remarks.add(where, Remark.of(place.freshId(show(), kind), kind, NEW_TEXT));
        insert("Add a remark", remarks, where);
    }

    /** Goes to a computed fact of the place, by its number. */
    public void chooseFact(int number) {
        facts.choose(number);
    }

    /** Adds the chosen fact as a remark after the chosen one; goes to that remark if there is one already. */
    public void addFact() {
        facts.chosen(place).ifPresent(fact -> {
            Optional<Integer> already = FactList.whereAlready(fact, show(), place);
            if (already.isEmpty()) {
                List<Remark> remarks = new ArrayList<>(remarks());
                int where = remarks.isEmpty() ? 0 : at + 1;
                remarks.add(where, FactList.remark(fact, show(), place));
                insert("Add a fact", remarks, where);
            } else {
                choose(already.get());
            }
        });
    }

    /**
     * Takes the chosen first draft for the person's own words, and what it says in another language for what the text says
     * now; then goes to the next one of the place that waits for it.
     */
    public void accept() {
        Remark chosen = chosen();
        if (chosen == null || !isToAccept(chosen)) {
            return;
        }
        List<Remark> remarks = new ArrayList<>(remarks());
        Translation other = chosen.translation();
        remarks.set(at, chosen.withDraft(false).translated(other == null ? null : other.older(false)));
        change(chosen.draft() ? "Accept a draft" : "Accept the other language", remarks, "");
        List<Remark> after = remarks();
        for (int i = 1; i <= after.size(); i++) {
            int next = (at + i) % after.size();
            if (isToAccept(after.get(next))) {
                choose(next);
                return;
            }
        }
    }

    /** True if something in it waits for a person to say that it will do. */
    static boolean isToAccept(Remark remark) {
        return remark.draft() || remark.isOlderInTranslation();
    }

    /**
     * Takes every first draft of the act for the person's own words; of the whole show where that is chosen. One step.
     *
     * @return how many there were
     */
    public int acceptAll() {
        Show accepted = show();
        int drafts = 0;
        for (RemarkPlace each : RemarkPlace.all(show())) {
            if (place.actId() == null || place.actId().equals(each.actId())) {
                List<Remark> were = each.in(accepted);
                drafts += (int) were.stream().filter(Remark::draft).count();
                accepted = each.with(
                        accepted, were.stream().map(r -> r.withDraft(false)).toList());
            }
        }
        make(new Change("Accept every draft", accepted, ""));
        return drafts;
    }

    public void delete() {
        if (chosen() != null) {
            List<Remark> remarks = new ArrayList<>(remarks());
            remarks.remove(at);
            change("Delete a remark", remarks, "");
            choose(at);
        }
    }

    /** Moves the chosen remark among those of its place; within a figure they are said in this order. */
    public void move(int by) {
        int to = at + by;
        if (chosen() != null && to >= 0 && to < remarks().size()) {
            List<Remark> remarks = new ArrayList<>(remarks());
            remarks.add(to, remarks.remove(at));
            change("Move a remark", remarks, "");
            choose(to);
        }
    }

    /**
     * Puts the plain words after the trade word at or after the caret, or after the first one.
     *
     * @return where the caret goes, or empty if there was nothing to put in
     */
    public Optional<Integer> insertPlainWords(int caret) {
        RemarkDraft typed = draft;
        List<SpeechFinding> helped = view().page().map(WordsView.RemarkPage::findings).orElse(List.of()).stream()
                .filter(f -> f.suggestion() != null)
                .toList();
        if (typed == null || helped.isEmpty()) {
            return Optional.empty();
        }
        SpeechFinding finding =
                helped.stream().filter(f -> f.toChar() >= caret).findFirst().orElse(helped.get(0));
        RemarkDraft helpedOut = typed.withAside(finding.toChar(), "that is, " + finding.suggestion());
        type(helpedOut);
        return Optional.of(
                finding.toChar() + helpedOut.text().length() - typed.text().length());
    }

    /** Looks at the show anew where it was changed elsewhere, or a step of it was taken back, at the remark that was; whether it was. */
    boolean follow() {
        Show now = show();
        if (now.equals(seen)) {
            return false;
        }
        Show before = seen;
        seen = now;
        Optional<RemarkPlace> other = Touched.remarks(before, now);
        if (other.isPresent()) {
            place = other.get();
            choose(Touched.first(place.in(before), place.in(now)));
        } else {
            if (!RemarkPlace.all(now).contains(place)) {
                place = RemarkPlace.SHOW;
            }
            choose(at);
        }
        return true;
    }

    /** What was found meanwhile about the plan and whole acts. */
    public void planned(WordsPlan next) {
        plan = next;
    }

    /** What was computed about each act and figure. */
    public void computed(Map<RemarkPlace, PlaceFacts> found) {
        facts.take(found);
    }

    /** Takes one remark more and goes to it; where there are as many as there may be, that is said and nothing changes. */
    private void insert(String name, List<Remark> remarks, int where) {
        try {
            change(name, remarks, "");
            choose(where);
        } catch (IllegalArgumentException e) {
            refused = "No further remark can be added here: " + e.getMessage() + ".";
        }
    }

    private void change(String what, List<Remark> remarks, String about) {
        make(new Change(what + " (" + presenter.name(show(), place) + ")", place.with(show(), remarks), about));
    }

    private void make(Change change) {
        seen = change.show();
        editing.change(change);
    }

    private List<Remark> remarks() {
        return place.in(show());
    }

    private @Nullable Remark chosen() {
        List<Remark> remarks = remarks();
        return at < remarks.size() ? remarks.get(at) : null;
    }
}
