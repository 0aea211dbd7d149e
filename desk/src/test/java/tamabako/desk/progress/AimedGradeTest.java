package tamabako.desk.progress;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

class AimedGradeTest {

    private static final Ladder LADDER = Ladders.ladder("abacus-by-sections").orElseThrow();

    @ParameterizedTest
    @CsvSource({
        "8 kyu, 8",
        "8級, 8",
        "８級, 8",
        "Grade 8, 8",
        "8, 8",
        "準1級, jun-1",
        "jun-1 kyu, jun-1",
        "Semi-grade 2, jun-2",
        "15級, 15",
        "段位, dan",
        "Dan, dan"
    })
    void theTeachersWordsAreFound(String words, String grade) {
        assertThat(LADDER.grades().get(AimedGrade.in(LADDER, words).orElseThrow()).id())
                .startsWith(grade);
    }

    @ParameterizedTest
    @CsvSource({"''", "soon", "99 kyu", "8 kyu or 7 kyu"})
    void otherWordsNameNoGrade(String words) {
        assertThat(AimedGrade.in(LADDER, words)).isEmpty();
    }
}
