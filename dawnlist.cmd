@echo off
rem Starts dawnlist from the folder of its source, with the Node that was installed beside it or else the system's.
setlocal
set "here=%~dp0"
set "node=%here%node_modules\node\bin\node.exe"
if not exist "%node%" set "node=node"

if exist "%here%dist\dawnlist.js" goto run
if exist "%here%node_modules" goto build
echo dawnlist is not installed yet; run this first: npm install 1>&2
exit /b 1

:build
echo Building dawnlist, which is needed once. 1>&2
"%node%" "%here%build\build.ts" 1>&2
if errorlevel 1 exit /b 1

:run
"%node%" "%here%dist\dawnlist.js" %*
exit /b %errorlevel%
