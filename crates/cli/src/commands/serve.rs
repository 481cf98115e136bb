//! `spearleaf serve`: the pages of a data folder.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use anyhow::Context;
use clap::Args;
use desk::office::Office;
use serde_json::json;
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use tokio::net::TcpListener;

const AFTER: &str = "\
The folder is made if it is not there. Stop with Ctrl-C.

Example:
  spearleaf serve spearleaf-data";

/// Options of `serve`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    #[command(flatten)]
    address: Address,
}

/// Where to serve.
#[derive(Args)]
pub struct Address {
    /// Address and port to serve on; port 0 takes a free one
    #[arg(long, value_name = "ADDRESS:PORT", default_value = "127.0.0.1:7474")]
    pub listen: SocketAddr,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, true, talk)?;
    serve(
        talk,
        Arc::new(office),
        &options.data,
        &options.address,
        false,
    )
}

/// Serves an office until Ctrl-C.
pub fn serve(
    talk: &Talk,
    office: Arc<Office>,
    folder: &Path,
    at: &Address,
    demo: bool,
) -> anyhow::Result<Outcome> {
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .build()?;
    runtime.block_on(async {
        let listener = TcpListener::bind(at.listen).await.with_context(|| {
            format!(
                "cannot listen on {}; another program may use this port, try --listen 127.0.0.1:0",
                at.listen
            )
        })?;
        let bound = listener.local_addr()?;
        if demo {
            talk.say(true, &talk.words("cli-demo", &[]))?;
        }
        if !bound.ip().is_loopback() {
            talk.note(&talk.words("cli-open-to-all", &[]));
        }
        let address = format!("http://{bound}/");
        let place = folder.display().to_string();
        let args = [
            ("folder", place.clone().into()),
            ("address", address.clone().into()),
        ];
        talk.say(true, &talk.words("cli-serving", &args))?;
        talk.object(
            &json!({"kind": "serving", "folder": place, "address": address, "demo": demo}),
        )?;
        web::serve(office, listener).await.context("serving")?;
        Ok(Outcome::Done)
    })
}
