package crowdline.show.figure;

import org.jspecify.annotations.Nullable;

/** The parts of a remark while another is made of them. */
final class RemarkCopy {
    String id;
    RemarkKind kind;
    String text;

    @Nullable
    String shortText;

    @Nullable
    MomentName at;

    @Nullable
    MomentName until;

    @Nullable
    Double earliestS;

    @Nullable
    Double latestS;

    double weight;
    boolean once;
    boolean draft;

    @Nullable
    DutyTimes duty;

    @Nullable
    String speaker;

    @Nullable
    Translation translation;

    RemarkCopy(Remark remark) {
        id = remark.id();
        kind = remark.kind();
        text = remark.text();
        shortText = remark.shortText();
        at = remark.at();
        until = remark.until();
        earliestS = remark.earliestS();
        latestS = remark.latestS();
        weight = remark.weight();
        once = remark.once();
        draft = remark.draft();
        duty = remark.duty();
        speaker = remark.speaker();
        translation = remark.translation();
    }

    Remark made() {
        return new Remark(
                id,
                kind,
                text,
                shortText,
                at,
                until,
                earliestS,
                latestS,
                weight,
                once,
                draft,
                duty,
                speaker,
                translation);
    }
}
