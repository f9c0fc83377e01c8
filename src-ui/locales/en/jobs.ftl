# Jobs: the bar on the cabinet card, and the list of all jobs.
job-title = Job
job-name = Name of the job
job-nameless = Cabinet without a name
job-save = Save
job-save-new = Save as a new job
job-saving = Saving …
job-new = Not saved as a job yet. What you type is kept in any case.
job-unkept = Not saved as a job yet. What you type is not kept now.
job-saved = Saved as revision { $revision }, { $when }
job-changed = Changed since revision { $revision }, { $when }
job-meanwhile = Revision { $theirs } was saved in another window meanwhile; this became revision { $revision }. Both are among the revisions.
job-made-anew = Saved as a new job: it was forgotten in another window meanwhile.
damaged-cabinet = What is on the card is damaged.
job-refused = Not saved. { $why } The job as it was, and what you typed, are still there.

jobs-title = Jobs
jobs-not-found = No job has that in its name.
jobs-none = No jobs yet. Open the cabinet card, give the job a name, and save it.
jobs-search = Find a job by its name
jobs-saved = { $when } · revision { $revision }
jobs-more = { $count } more
jobs-open = Open
jobs-open-revision = Open revision { $revision }
jobs-copy = Copy
jobs-copy-of = { $name }, copy
jobs-copied = { $name } is in the list.
jobs-file = Save as a file
jobs-away = Put away
jobs-put-away = { $name } is put away. It can be put back from the end of this page.
jobs-away-title = Put away
jobs-back = Put back
jobs-put-back = { $name } is back in the list.
jobs-forget = Forget for good
jobs-forget-sure = Press once more to forget it
jobs-forgotten = { $name } is forgotten, with all of its revisions.
jobs-revisions = Revisions
jobs-revisions-note = The last fifty. One that is opened goes onto the cabinet card, and becomes the newest when you save it. What is on the card and not saved yet is saved first.
jobs-damaged = { $count ->
    [one] One more job is damaged and cannot be read. It is left as it is.
   *[other] { $count } more jobs are damaged and cannot be read. They are left as they are.
}
jobs-revisions-damaged = { $count ->
    [one] One more revision is damaged and cannot be read. It is left as it is.
   *[other] { $count } more revisions are damaged and cannot be read. They are left as they are.
}
jobs-files = Files of jobs
jobs-file-in = Take in jobs from a file
jobs-files-note = A file holds every job as it was saved last. Earlier revisions stay on this device.
jobs-file-all = Save all jobs as a file
jobs-file-without = Saved as { $place }, without what cannot be read: { $names }
jobs-file-read = was chosen.
jobs-file-not-read = cannot be opened. A file of jobs of at most 32 MB is wanted.
jobs-taken-in-part = { $count } of { $all } jobs are in the list now, then it stopped: { $why }
jobs-taken-in = { $count ->
    [one] One job is in the list now.
   *[other] { $count } jobs are in the list now.
}
jobs-back-up = Back up everything
jobs-may-be-cleared = This browser may clear what is kept when the device gets short of room. Save your jobs as a file now and then.
file-saved = Saved as { $place }
file-not-saved = Not saved. { $why }

gives-back = { $count ->
    [one] One input that the cabinet has too was changed here.
   *[other] { $count } inputs that the cabinet has too were changed here.
}
gives-back-do = Give back to the cabinet
gives-back-not = Leave the cabinet as it is
