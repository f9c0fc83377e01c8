//! `cargo xtask bench`: the figures this project holds itself to, with the machine they were taken on.

pub(crate) mod sheets;

use crate::display::Hidden;
use crate::halt::{AtFile, Halt};
use crate::{call, prepared, tree, web, window};
use serde_json::Value;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

pub(crate) fn bench() -> Result<(), Halt> {
    prepared::install()?;
    web::build()?;
    let app = window::build()?;
    let mut figures = calculations()?;
    figures.push(Figure {
        name: "web app, every file by itself, gzip -9".to_owned(),
        value: web::kilobytes(web::size()?),
        unit: "KB".to_owned(),
        bar: Some(450.0),
    });
    figures.extend(running_app(&app)?);
    println!("\n{}\n", machine());
    for figure in &figures {
        println!("{}", figure.line());
    }
    Ok(())
}

/// One measured thing.
#[derive(Debug, PartialEq)]
struct Figure {
    name: String,
    value: f64,
    unit: String,
    /// What it must stay under, in the same unit; `None` is reported only.
    bar: Option<f64>,
}

impl Figure {
    fn line(&self) -> String {
        let Self { name, value, unit, bar } = self;
        let verdict = match bar {
            Some(bar) if value < bar => format!("under {bar} {unit}"),
            Some(bar) => format!("NOT under {bar} {unit}"),
            None => "no bar".to_owned(),
        };
        format!("{name:<52} {value:>10.3} {unit:<3} {verdict}")
    }

    /// Reads `{"name": "…", "value": 1.5, "unit": "ms", "bar": 16}`; `bar` may be missing or null.
    fn read(line: &str) -> Option<Self> {
        let value: Value = serde_json::from_str(line).ok()?;
        Some(Self {
            name: value["name"].as_str()?.to_owned(),
            value: value["value"].as_f64()?,
            unit: value["unit"].as_str()?.to_owned(),
            bar: value["bar"].as_f64(),
        })
    }
}

/// The calculations by themselves, as criterion measures them.
fn calculations() -> Result<Vec<Figure>, Halt> {
    let benches = tree::root().join("src-calc/benches");
    let results = tree::target().join("criterion");
    if results.exists() {
        // Results of benches that are no more would be listed with the others.
        fs::remove_dir_all(&results).at("emptied", &results)?;
    }
    let mut command = call::cargo();
    command.args(["bench", "--package", "scantling"]);
    for file in tree::files_below(&benches).at("read", &benches)? {
        if let Some(name) = file.file_stem().and_then(|name| name.to_str()) {
            command.args(["--bench", name]);
        }
    }
    command.args(["--", "--warm-up-time", "0.5", "--measurement-time", "2", "--noplot"]);
    call::run("Measuring the calculations", &mut command)?;

    let mut figures = Vec::new();
    for file in tree::files_below(&results).at("read", &results)? {
        if file.ends_with("new/estimates.json") {
            figures.extend(criterions(&read(&file)?, &read(&file.with_file_name("benchmark.json"))?));
        }
    }
    Ok(figures)
}

fn read(path: &Path) -> Result<Value, Halt> {
    Ok(serde_json::from_str(&fs::read_to_string(path).at("read", path)?).unwrap_or_default())
}

/// What criterion wrote of one bench, in microseconds: it counts in nanoseconds.
fn criterions(estimates: &Value, benchmark: &Value) -> Option<Figure> {
    let name = benchmark["full_id"].as_str()?.to_owned();
    let value = estimates["median"]["point_estimate"].as_f64()? / 1000.0;
    let bar = match benchmark["group_id"].as_str() {
        // A whole cabinet asks a dozen cards.
        Some("solve") if name == "solve/cabinet" => Some(1000.0),
        Some("cabinet") if name.starts_with("cabinet/two_hundred") => Some(50_000.0),
        Some("cabinet") => Some(1000.0),
        Some("solve") => Some(10.0),
        Some("read") => Some(1.0),
        _ => None,
    };
    Some(Figure { name, value, unit: "µs".to_owned(), bar })
}

/// The running app, in Chromium and in its window: the tests' program `measure` prints a line of JSON per figure.
fn running_app(app: &Path) -> Result<Vec<Figure>, Halt> {
    let display = Hidden::start()?;
    let mut command = call::cargo();
    command.args(["run", "--quiet", "--package", "scantling-tests", "--bin", "measure"]).stderr(Stdio::inherit());
    display.lend(prepared::tell(&mut command, app));
    let output = command.output().map_err(|source| call::not_started(&command, source))?;
    let figures = String::from_utf8_lossy(&output.stdout).lines().filter_map(Figure::read).collect();
    if output.status.success() {
        Ok(figures)
    } else {
        Err(Halt::Unsuccessful { what: "Measuring the running app".to_owned(), status: output.status })
    }
}

/// The processor, its cores, the system and the compiler.
fn machine() -> String {
    let field = |file: &str, name: &str| {
        let text = fs::read_to_string(file).ok()?;
        let line = text.lines().find_map(|line| line.strip_prefix(name).map(str::to_owned))?;
        Some(line.trim_start_matches([' ', '\t', ':', '=']).trim_matches('"').to_owned())
    };
    let processor = field("/proc/cpuinfo", "model name").unwrap_or_else(|| std::env::consts::ARCH.to_owned());
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let system = field("/etc/os-release", "PRETTY_NAME").unwrap_or_else(|| std::env::consts::OS.to_owned());
    let compiler = call::says(Command::new("rustc").arg("--version")).unwrap_or_default();
    format!("{processor}, {cores} cores, {system}, {compiler}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    fn figure(value: f64, bar: Option<f64>) -> Figure {
        Figure { name: "keystroke".to_owned(), value, unit: "ms".to_owned(), bar }
    }

    #[test]
    fn figures_of_the_running_app_are_read_line_by_line() {
        for (line, want) in [
            (r#"{"name":"keystroke","value":12.5,"unit":"ms","bar":16}"#, Some(figure(12.5, Some(16.0)))),
            (r#"{"name":"keystroke","value":12,"unit":"ms","bar":null}"#, Some(figure(12.0, None))),
            (r#"{"name":"keystroke","unit":"ms"}"#, None),
            ("chromium is starting", None),
        ] {
            assert_eq!(Figure::read(line), want, "{line}");
        }
    }

    #[test]
    fn a_figure_is_held_against_its_bar() {
        assert!(figure(15.9, Some(16.0)).line().ends_with("15.900 ms  under 16 ms"));
        assert!(figure(16.0, Some(16.0)).line().ends_with("NOT under 16 ms"));
        assert!(figure(16.0, None).line().ends_with("no bar"));
    }

    #[test]
    fn criterion_counts_in_nanoseconds() {
        let estimates = json!({"mean": {"point_estimate": 9.0}, "median": {"point_estimate": 2500.0}});
        let solve = criterions(&estimates, &json!({"group_id": "solve", "full_id": "solve/shelf"})).unwrap();
        assert_eq!((solve.name.as_str(), solve.value, solve.bar), ("solve/shelf", 2.5, Some(10.0)));
        let whole = criterions(&estimates, &json!({"group_id": "solve", "full_id": "solve/cabinet"})).unwrap();
        assert_eq!(whole.bar, Some(1000.0));
        assert_eq!(criterions(&estimates, &json!({"group_id": "read", "full_id": "read/a"})).unwrap().bar, Some(1.0));
        assert_eq!(criterions(&json!({}), &json!({"full_id": "x"})), None);
    }
}
