//! The same seed and the same tries give the same layout.

use scantling::sheets::Search;
use scantling_tests::sheets::jobs;

#[test]
fn the_same_seed_and_tries_give_the_same_layout() {
    for seed in 0..60 {
        let job = jobs::job(seed).unwrap();
        let layout = |steps: &[u32]| {
            let mut search = Search::new(&job, 7).unwrap();
            steps.iter().for_each(|tries| search.step(*tries));
            search.layout().unwrap()
        };
        let once = layout(&[60]);
        assert_eq!(once, layout(&[60]), "job {seed}");
        assert_eq!(once, layout(&[1, 9, 20, 30]), "job {seed}: in other portions");
    }
}
