package tamabako.problems.grade.file;

/// A ladder file that is in order, with every kind of problem, for tests to break.
final class SampleLadder {

    static final String FILE = "ours.yaml";

    static final String YAML =
            """
            ladder: ours
            name: {en: Our grades, ja: 教室の級}
            about: For our own tests.
            sources:
              ours: {name: our choice, confirmed: no}
              body: {name: {en: The body, ja: 協会}, confirmed: yes}
            grades:
              - grade: "2"
                name: Grade 2
                time: 30 min
                pass: {points: 80}
                sections:
                  - section: columns
                    name: Columns
                    points: 10
                    problems:
                      - count: 10
                        kind: columns
                        rows: 10
                        ji: 25
                        lengths: {4: 2, 3: 3, 2: 3, 1: 2}
                        mixed: {first half: 2, second half: 2}
                        minus rows: 3
                        below zero: {second half: 1}
                  - section: products
                    name: Products
                    points: 5
                    problems:
                      - count: 10
                        kind: products
                        in all: 7
                        multiplicand: 3-5
                        multiplier: 2-4
                        decimals: 5
                        places: 3
                        rounded up: 1
                        rounded down: 1
                    from: {body: [digits], ours: [split, points]}
              - grade: "1"
                name: Grade 1
                pass:
                  scored by: lowest section
                  ranks:
                    - {rank: low, name: Low, points: 50}
                    - {rank: high, name: High, points: 90}
                numbering: by section
                elective: {choose: 1, of: [pad, roots]}
                sections:
                  - section: steps
                    name: Steps
                    points: 10
                    time: 3 min 30 s
                    mode: mental
                    order: mixed
                    problems:
                      - count: 10
                        kind: columns
                        rows: 4
                        digits: 1-2
                        ji: 6
                        unit: JPY
                        techniques: [direct, five-complement]
                        each has: [five-complement]
                        running carries: never
                  - section: pad
                    name: Pad
                    points: 10
                    time: 7 min
                    problems:
                      - {count: 15, kind: slip pad, leaves: 8, pad leaves: 20, lines: 5, digits: 2-5}
                  - section: roots
                    name: Roots
                    points: 10
                    time: 90 s
                    problems:
                      - {count: 10, kind: roots, degree: 2, digits: 2-3}
                from: {ours: [time]}
            """;

    private SampleLadder() {}
}
